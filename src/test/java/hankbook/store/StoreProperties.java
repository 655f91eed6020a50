package hankbook.store;

import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.balances;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.refusal;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.RandomWork;
import hankbook.ledger.Refusal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/** Random work on a store agrees, at every step, with a table of plain numbers. */
class StoreProperties {
  @Property(tries = 15)
  void randomWorkInAFileAgreesWithANaiveModelAndAuditsClean(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int steps) throws Exception {
    agrees(Vendor.H2, seed, steps);
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void randomWorkAtAServerAgreesWithANaiveModelAndAuditsClean(@ForAll long seed, @ForAll @IntRange(min = 20, max = 40) int steps) throws Exception {
    agrees(Vendor.POSTGRESQL, seed, steps);
  }

  private static void agrees(Vendor vendor, long seed, int steps) throws Exception {
    RandomWork work = new RandomWork(seed);
    try (Scratch scratch = new Scratch(); Store store = Store.open(vendor.ledger(scratch.folder()))) {
      add(store, RandomWork.SKEINS.toArray(String[]::new));
      for (int step = 0; step < steps; step++) {
        Entry entry = work.next();
        Optional<Refusal> refusal = refusal(store, entry);
        work.answered(entry, refusal);
        work.agreesWith(balances(store));
        if (refusal.isEmpty()) {
          assertThat(post(store, entry)).isEmpty();
        }
      }
      assertThat(chain(store)).extracting(ChainedEntry::entry).isEqualTo(work.taken());
      assertThat(audit(store)).isEmpty();
    }
  }
}
