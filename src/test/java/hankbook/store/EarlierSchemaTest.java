package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.entry;
import static hankbook.store.Examples.move;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.reserve;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import java.nio.file.Path;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A ledger of the first schema, with entries in it, is brought up to the newest and loses nothing. */
class EarlierSchemaTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void aLedgerOfTheFirstSchemaKeepsItsEntriesAndTakesNewKinds(Vendor vendor) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    Flyway.configure().dataSource(Connections.source(address)).locations("classpath:db/migration", "classpath:db/" + vendor.folder).target("2").load().migrate();
    fillBehindTheProgram(address);
    try (Store store = Store.open(address)) {
      List<ChainedEntry> before = chain(store);
      assertThat(before).hasSize(2);
      post(store, entry(3, EntryKind.EXPECT, move(new Place.Maker(), new Place.Ordered(), 50)));
      post(store, entry(4, EntryKind.RECEIVE, move(new Place.Ordered(), new Place.Shelf(), 50)));
      assertThat(chain(store)).hasSize(4).startsWith(before.toArray(ChainedEntry[]::new));
      assertThat(audit(store)).isEmpty();
    }
  }

  /** As the program of that schema wrote it: what it wrote then, it writes now. */
  private void fillBehindTheProgram(LedgerAddress address) throws Exception {
    try (Store newest = Store.open(new LedgerAddress.InFile(folder.resolve("newest")))) {
      Examples.add(newest, CORAL);
      post(newest, receive(1, 100));
      post(newest, reserve(2, 60));
      for (String table : List.of("skein", "entry", "transfer")) {
        CopiedRows.of(newest.address(), table, address);
      }
      String lastHash = chain(newest).getLast().hash();
      Vendor.run(address, "update chain_end set entries = 2, last_hash = '" + lastHash + "'");
    }
  }
}
