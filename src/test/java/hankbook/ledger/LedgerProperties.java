package hankbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LedgerProperties {
  @Property(tries = 200)
  void randomWorkAgreesWithANaiveModelAndAuditsClean(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int steps) {
    BookWork work = new BookWork(seed);
    for (int step = 0; step < steps; step++) {
      work.step();
      assertThat(Audit.of(work.chain, work.book.balances()).findings()).isEmpty();
    }
    assertThat(Book.of(work.chain)).isEqualTo(work.book);
  }

  @Property(tries = 200)
  void anyOneAlteredFieldOfAPastEntryIsFoundAndNamed(@ForAll long seed, @ForAll @IntRange(min = 5, max = 25) int steps) {
    BookWork work = new BookWork(seed);
    for (int step = 0; step < steps; step++) {
      work.step();
    }
    if (work.chain.isEmpty()) {
      return;
    }
    int at = work.random.below(work.chain.size());
    for (ChainedEntry altered : alterations(work.chain.get(at))) {
      List<ChainedEntry> chain = new ArrayList<>(work.chain);
      chain.set(at, altered);
      assertThat(Audit.of(chain, work.book.balances()).firstBad()).as("altered: %s", altered).contains(altered);
    }
  }

  /** The entry with each of its fields altered in turn, as far as an altered one can be made at all. */
  private static List<ChainedEntry> alterations(ChainedEntry link) {
    Entry e = link.entry();
    List<ChainedEntry> all = new ArrayList<>(List.of(
        new ChainedEntry(link.number() + 1, e, link.previousHash(), link.hash()),
        new ChainedEntry(link.number(), e, "f" + link.previousHash().substring(1) + "0", link.hash()),
        new ChainedEntry(link.number(), e, link.previousHash(), link.hash() + "0")));
    List<Entry> entries = new ArrayList<>(List.of(
        new Entry(new UUID(9, 9), e.kind(), e.date(), e.author(), e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date().plusDays(1), e.author(), e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date(), e.author() + "x", e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date(), e.author(), e.note() + "x", e.transfers(), e.reverses())));
    if (e.reverses().isPresent()) {
      entries.add(new Entry(e.id(), e.kind(), e.date(), e.author(), e.note(), e.transfers(), Optional.of(new UUID(9, 9))));
    } else {
      EntryKind other = e.kind() == EntryKind.WOVEN ? EntryKind.WASTE : EntryKind.WOVEN;
      entries.add(new Entry(e.id(), other, e.date(), e.author(), e.note(), e.transfers(), e.reverses()));
    }
    for (Transfer t : alterations(e.transfers().getFirst())) {
      List<Transfer> transfers = new ArrayList<>(e.transfers());
      transfers.set(0, t);
      entries.add(new Entry(e.id(), e.kind(), e.date(), e.author(), e.note(), transfers, e.reverses()));
    }
    entries.forEach(entry -> all.add(new ChainedEntry(link.number(), entry, link.previousHash(), link.hash())));
    return all;
  }

  private static List<Transfer> alterations(Transfer t) {
    Place other = new Place.Thrums("Elsewhere");
    return List.of(
        new Transfer(t.skein() + "x", t.from(), t.to(), t.length()),
        new Transfer(t.skein(), other, t.to(), t.length()),
        new Transfer(t.skein(), t.from(), other, t.length()),
        new Transfer(t.skein(), t.from(), t.to(), t.length().plus(new Length(1))));
  }

  /** Random work on a book. */
  private static final class BookWork {
    private final RandomWork random;
    private final List<ChainedEntry> chain = new ArrayList<>();
    private Book book = Book.EMPTY;

    BookWork(long seed) {
      random = new RandomWork(seed);
    }

    void step() {
      Entry entry = random.next();
      switch (book.post(entry)) {
        case Outcome.Posted(Book now, ChainedEntry link) -> {
          random.answered(entry, Optional.empty());
          book = now;
          chain.add(link);
          assertThat(book.post(entry)).isEqualTo(new Outcome.AlreadyThere(entry));
        }
        case Outcome.Refused(Refusal why) -> random.answered(entry, Optional.of(why));
        case Outcome other -> throw new AssertionError(other);
      }
      random.agreesWith(book.balances());
    }
  }
}
