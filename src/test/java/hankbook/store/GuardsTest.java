package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.reserve;
import static hankbook.store.Examples.reverse;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What the databases refuse by themselves, tried behind the program's back. The ledger is sound after every one. */
@ParameterizedClass
@EnumSource
class GuardsTest {
  private static final String ENTRY = "(select id from entry where number = 1)";

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Store store;

  GuardsTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void openWithFortyMetresOnTheShelf() throws Exception {
    address = vendor.ledger(folder);
    store = Store.open(address);
    add(store, CORAL);
    post(store, receive(1, 100));
    post(store, reserve(2, 60));
    store.write(session -> {
      session.plans().keep("Scarf", "{}", "Ida", NOON);
      return session;
    });
  }

  @AfterEach
  void auditAndClose() {
    assertThat(audit(store)).isEmpty();
    assertThat(chain(store)).hasSize(2);
    store.close();
  }

  @Test
  void whatIsWrittenIsNeitherAlteredNorDeleted() {
    store.write(session -> {
      session.dues().keep(CORAL, LocalDate.of(2026, 12, 20), "Ida", NOON);
      session.turns().keep(List.of("Scarf"), "Ida", NOON);
      return session;
    });
    for (String table : new String[] {"entry", "transfer", "plan_version", "due_version", "turn_version"}) {
      assertThat(refused("delete from " + table)).as(table).isEqualTo("P0001");
    }
    assertThat(refused("update entry set note = 'another'")).isEqualTo("P0001");
    assertThat(refused("update entry set hash = hash")).isEqualTo("P0001");
    assertThat(refused("update transfer set tenths = tenths + 1")).isEqualTo("P0001");
    assertThat(refused("update plan_version set body = 'another'")).isEqualTo("P0001");
    assertThat(refused("update due_version set due = date '2027-01-01'")).isEqualTo("P0001");
    assertThat(refused("update turn_version set turn = 2")).isEqualTo("P0001");
  }

  @Test
  void aSkeinIsNeitherAlteredNorDeletedEvenBeforeAnythingMovedIt() {
    add(store, "Slate");
    assertThat(refused("update skein set grist = 'Nm 2' where code = 'Slate'")).isEqualTo("P0001");
    assertThat(refused("delete from skein where code = 'Slate'")).isEqualTo("P0001");
  }

  @Test
  void noPlaceInTheHouseHoldsLessThanNothing() {
    assertThat(refused(transfer(CORAL, "SHELF", "", "AWAY", "", 400_001))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "RESERVED", "Quay towels", "LOOM", "Quay towels", 600_001))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "RESERVED", "Scarf", "SHELF", "", 1))).isEqualTo(vendor.checkState);
    assertThat(refused("update balance set tenths = -1 where place = 'SHELF'")).isEqualTo(vendor.checkState);
  }

  @Test
  void whatWasOrderedArrivesOnce() {
    String ordered = transfer(CORAL, "MAKER", "", "ORDERED", "", 5);
    String arrived = transfer(CORAL, "ORDERED", "", "SHELF", "", 5).replace(", 9,", ", 10,");
    assertThat(refused(ordered, arrived, arrived.replace(", 10,", ", 11,"))).isEqualTo(vendor.checkState);
    assertThat(refused(arrived)).isEqualTo(vendor.checkState);
  }

  @Test
  void anEntryIsOfAKindThatThereIs() {
    String entry = "insert into entry (id, number, kind, dated, author, note, previous_hash, hash, recorded_at) select cast('00000000-0000-0000-0000-00000000000a' as uuid), 10,"
        + " '%s', dated, author, 'again', 'p1', 'h1', recorded_at from entry where number = 1";
    assertThat(refused(entry.formatted("BORROW"))).isEqualTo(vendor.checkState);
    assertThat(refused(entry.formatted("EXPECT"), entry.formatted("EXPECT"))).as("the first is taken").isEqualTo("23505");
  }

  @Test
  void aTransferMovesSomethingSomewhereElse() {
    assertThat(refused(transfer(CORAL, "SHELF", "", "AWAY", "", 0))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "AWAY", "", "SHELF", "", -5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "MAKER", "", "SHELF", "", 1_000_000_000_001L))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "SHELF", "", "SHELF", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "RESERVED", "Quay towels", "RESERVED", "Quay towels", 5))).isEqualTo(vendor.checkState);
  }

  @Test
  void aTransferGoesBetweenPlacesThatThereAre() {
    assertThat(refused(transfer(CORAL, "MAKER", "", "CELLAR", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "CELLAR", "", "SHELF", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "MAKER", "Scarf", "SHELF", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "MAKER", "", "SHELF", "Scarf", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "SHELF", "", "RESERVED", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer(CORAL, "LOOM", "", "SHELF", "", 5))).isEqualTo(vendor.checkState);
    assertThat(refused(transfer("Slate", "MAKER", "", "SHELF", "", 5))).isEqualTo(vendor.foreignKeyState);
  }

  @Test
  void aBalanceStandsAtAPlaceThatThereIs() {
    assertThat(refused("insert into balance (skein, place, plan, tenths) values ('" + CORAL + "', 'SHELF', 'Scarf', 5)")).isEqualTo(vendor.checkState);
    assertThat(refused("insert into balance (skein, place, plan, tenths) values ('" + CORAL + "', 'CELLAR', '', 5)")).isEqualTo(vendor.checkState);
  }

  @Test
  void anEntryIsReversedOnlyOnce() {
    String reversal = "insert into entry (id, number, kind, dated, author, note, reverses, previous_hash, hash, recorded_at) select cast('%s' as uuid), %d,"
        + " '%s', dated, author, 'again', %s, '%s', '%s', recorded_at from entry where number = 1";
    String one = reversal.formatted("00000000-0000-0000-0000-00000000000a", 10, "REVERSAL", "id", "p1", "h1");
    String two = reversal.formatted("00000000-0000-0000-0000-00000000000b", 11, "REVERSAL", "id", "p2", "h2");
    assertThat(refused(one, two)).isEqualTo("23505");
    assertThat(refused(reversal.formatted("00000000-0000-0000-0000-00000000000a", 10, "RESERVE", "id", "p1", "h1"))).isEqualTo(vendor.checkState);
    assertThat(refused(reversal.formatted("00000000-0000-0000-0000-00000000000a", 10, "REVERSAL", "null", "p1", "h1"))).isEqualTo(vendor.checkState);
    assertThat(refused(reversal.formatted("00000000-0000-0000-0000-00000000000a", 2, "REVERSAL", "id", "p1", "h1"))).isEqualTo("23505");
  }

  @Test
  void aWeighingHasBothItsMassesOrNeither() {
    String skein = "insert into skein (code, yarn, colour, hex, fibre, form, gross_milligrams, tare_milligrams, opened, lot, location, recorded_at)"
        + " select 'Slate', yarn, colour, hex, fibre, form, %s, %s, opened, lot, location, recorded_at from skein";
    assertThat(refused(skein.formatted("5", "null"))).isEqualTo(vendor.checkState);
    assertThat(refused(skein.formatted("cast(null as bigint)", "5"))).isEqualTo(vendor.checkState);
    assertThat(refused(skein.formatted("5", "6"))).isEqualTo(vendor.checkState);
  }

  @Test
  void thereIsOneEndOfTheChain() {
    assertThat(refused("insert into chain_end (id, entries, last_hash) values (2, 0, 'x')")).isEqualTo(vendor.checkState);
    assertThat(refused("insert into chain_end (id, entries, last_hash) values (1, 0, 'x')")).isEqualTo("23505");
  }

  @Test
  void aReversalGoesThroughTheGuardsAsAnyEntryDoes() {
    assertThat(Examples.refusal(store, reverse(receive(1, 100), 3))).isPresent();
  }

  private static String transfer(String skein, String from, String fromPlan, String to, String toPlan, long tenths) {
    return "insert into transfer (entry, line, skein, from_place, from_plan, to_place, to_plan, tenths) values (%s, 9, '%s', '%s', '%s', '%s', '%s', %d)"
        .formatted(ENTRY, skein, from, fromPlan, to, toPlan, tenths);
  }

  /** The state with which the last of these statements is refused; the ones before it are taken, and taken back. */
  private String refused(String... statements) {
    SQLException refusal = catchThrowableOfType(SQLException.class, () -> {
      try (var connection = Vendor.behind(address); var sql = connection.createStatement()) {
        connection.setAutoCommit(false);
        for (String statement : statements) {
          sql.execute(statement);
        }
        throw new AssertionError("taken: " + statements[statements.length - 1]);
      }
    });
    return refusal.getSQLState();
  }
}
