package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.described;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.reserve;
import static hankbook.store.Examples.reverse;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Sett;
import hankbook.yarn.GristSample;
import hankbook.yarn.Measures;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
      session.skeins().describe(described(CORAL, "A"), "Ida", NOON);
      return session;
    });
    for (String table : new String[] {"entry", "transfer", "plan_version", "due_version", "turn_version", "skein_version"}) {
      assertThat(refused("delete from " + table)).as(table).isEqualTo("P0001");
    }
    assertThat(refused("update entry set note = 'another'")).isEqualTo("P0001");
    assertThat(refused("update entry set hash = hash")).isEqualTo("P0001");
    assertThat(refused("update transfer set tenths = tenths + 1")).isEqualTo("P0001");
    assertThat(refused("update plan_version set body = 'another'")).isEqualTo("P0001");
    assertThat(refused("update due_version set due = date '2027-01-01'")).isEqualTo("P0001");
    assertThat(refused("update turn_version set turn = 2")).isEqualTo("P0001");
    assertThat(refused("update skein_version set lot = 'B'")).isEqualTo("P0001");
    String version = "insert into skein_version (skein, version, hex, fibre, lot, location, cost_minor, currency, author, recorded_at)"
        + " select %s, hex, fibre, lot, location, %s, author, recorded_at from skein_version";
    assertThat(refused(version.formatted("skein, 1", "5, 'EUR'"))).isEqualTo("23505");
    assertThat(refused(version.formatted("skein, 0", "5, 'EUR'"))).isEqualTo(vendor.checkState);
    assertThat(refused(version.formatted("skein, 2", "5, cast(null as varchar)"))).isEqualTo(vendor.checkState);
    assertThat(refused(version.formatted("skein, 2", "-5, 'EUR'"))).isEqualTo(vendor.checkState);
    assertThat(refused(version.formatted("'Slate', 2", "5, 'EUR'"))).isEqualTo(vendor.foreignKeyState);
  }

  @Test
  void whatWasMeasuredAndSetIsNeitherAlteredNorDeletedNorNonsense() {
    store.write(session -> {
      session.settings().set("riskLimit", "2 %", "Ida", NOON);
      session.gristSamples().add("Harbour cotton 8/2", Optional.of(new GristSample(Length.metres(10), new Mass(630), new Mass(10), Length.ZERO)), "Ida", NOON);
      session.remeasurements().add(new Remeasurement(CORAL, Optional.empty(), Length.metres(100), new Measures(Optional.empty(), Optional.empty(), Optional.empty())), "Ida", NOON);
      return session;
    });
    for (String table : new String[] {"setting", "grist_sample", "skein_measure"}) {
      assertThat(refused("delete from " + table)).as(table).isEqualTo("P0001");
      assertThat(refused("update " + table + " set author = 'another'")).as(table).isEqualTo("P0001");
    }
    String measure = "insert into skein_measure (skein, number, found_tenths, turns, reel_tenths, gross_milligrams, tare_milligrams, regain, author, recorded_at)"
        + " select '%s', 2, cast(%s as bigint), cast(%s as integer), cast(%s as bigint), cast(%s as bigint), cast(%s as bigint), cast(%s as varchar), 'Ida', recorded_at from setting";
    assertThat(refused(measure.formatted("Slate", "5", "null", "null", "null", "null", "null"))).isEqualTo(vendor.foreignKeyState);
    for (String values : new String[] {"-1,null,null,null,null,null", "5,7,null,null,null,null", "5,null,null,5,null,null", "5,null,null,5,6,null", "5,null,null,null,null,'8 %'"}) {
      assertThat(refused(measure.formatted((Object[]) (CORAL + "," + values).split(",")))).as(values).isEqualTo(vendor.checkState);
    }
    assertThat(refused("insert into grist_sample (yarn, number, length_tenths, author, recorded_at) select yarn, 2, 5, author, recorded_at from grist_sample")).isEqualTo(vendor.checkState);
  }

  @Test
  void whatWasPaidIsNeitherAlteredNorDeletedNorNonsense() {
    store.write(session -> {
      session.purchases().keep(1, Examples.paid(CORAL), true, "", "Ida", NOON);
      return session;
    });
    assertThat(refused("delete from purchase_skein")).isEqualTo("P0001");
    assertThat(refused("update purchase_skein set landed_minor = 1")).isEqualTo("P0001");
    assertThat(refused("delete from purchase_line")).isEqualTo("P0001");
    assertThat(refused("update purchase_line set price_minor = 1")).isEqualTo("P0001");
    assertThat(refused("delete from purchase_version")).isEqualTo("P0001");
    assertThat(refused("update purchase_version set stands = false")).isEqualTo("P0001");
    String version = "insert into purchase_version (purchase, version, dated, seller, currency, carriage_minor, carriage_currency, carriage_by, duty_minor, duty_currency, duty_by,"
        + " discount_minor, discount_by, rate, rate_day, home_currency, stands, reason, author, recorded_at) select purchase, %s, dated, seller, currency, %s, carriage_currency, %s,"
        + " duty_minor, duty_currency, duty_by, discount_minor, discount_by, cast(%s as varchar), cast(%s as date), %s, stands, reason, author, recorded_at from purchase_version";
    String turned = "'0.09';'2026-03-14';'EUR'";
    assertThat(refused(version.formatted((Object[]) ("1;5;'VALUE';" + turned).split(";")))).isEqualTo("23505");
    for (String values : new String[] {"0;5;'VALUE';" + turned, "2;-5;'VALUE';" + turned, "2;5;'SIZE';" + turned, "2;5;'MASS';'0.09';null;'EUR'",
      "2;5;'MASS';null;null;'EUR'", "2;5;'MASS';'0.09';'2026-03-14';'SEK'"}) {
      assertThat(refused(version.formatted((Object[]) values.split(";")))).as(values).isEqualTo(vendor.checkState);
    }
    String skein = "insert into purchase_skein (purchase, version, line, turn, skein, landed_minor, before_minor, before_currency) values (1, 1, %s, 2, '%s', %s, 'EUR')";
    assertThat(refused(skein.formatted("1", "Slate", "5, 5"))).isEqualTo(vendor.foreignKeyState);
    add(store, "Slate");
    assertThat(refused(skein.formatted("2", "Slate", "5, 5"))).as("no such line").isEqualTo(vendor.foreignKeyState);
    assertThat(refused(skein.formatted("1", CORAL, "5, 5"))).as("paid twice").isEqualTo("23505");
    assertThat(refused(skein.formatted("1", "Slate", "-5, 5"))).isEqualTo(vendor.checkState);
    assertThat(refused(skein.formatted("1", "Slate", "5, null"))).isEqualTo(vendor.checkState);
  }

  @Test
  void turnsHaveTheirReelAndMoistureItsWeight() {
    String skein = "insert into skein (code, yarn, colour, hex, fibre, form, turns, reel_tenths, regain, opened, lot, location, recorded_at)"
        + " select 'Slate', yarn, colour, hex, fibre, form, %s, opened, lot, location, recorded_at from skein";
    assertThat(refused(skein.formatted("5, cast(null as bigint), cast(null as varchar)"))).isEqualTo(vendor.checkState);
    assertThat(refused(skein.formatted("0, 5, cast(null as varchar)"))).isEqualTo(vendor.checkState);
    assertThat(refused(skein.formatted("cast(null as integer), cast(null as bigint), '8 %'"))).isEqualTo(vendor.checkState);
  }

  @Test
  void aSkeinIsNeitherAlteredNorDeletedEvenBeforeAnythingMovedIt() {
    add(store, "Slate");
    assertThat(refused("update skein set grist = 'Nm 2' where code = 'Slate'")).isEqualTo("P0001");
    assertThat(refused("delete from skein where code = 'Slate'")).isEqualTo("P0001");
  }

  @Test
  void whatWasKeptOfALoomOrAReedIsNeitherAlteredNorDeleted() {
    store.write(session -> {
      session.looms().keep(new Loom("Table loom", Length.metres(1), Length.ZERO, 4), false, "Ida", NOON);
      session.reeds().keep(new Reed("12/in", Sett.perInch(12), Optional.empty()), false, "Ida", NOON);
      return session;
    });
    for (String table : new String[] {"loom_version", "reed_version"}) {
      assertThat(refused("delete from " + table)).as(table).isEqualTo("P0001");
      assertThat(refused("update " + table + " set put_away = true")).as(table).isEqualTo("P0001");
    }
    String loom = "insert into loom_version (loom, version, width_tenths, waste_tenths, shafts, put_away, author, recorded_at) select loom, version + 1, %s, put_away, author, recorded_at from loom_version";
    assertThat(refused(loom.formatted("0, 0, 4"))).isEqualTo(vendor.checkState);
    assertThat(refused(loom.formatted("1, -1, 4"))).isEqualTo(vendor.checkState);
    assertThat(refused(loom.formatted("1, 0, 0"))).isEqualTo(vendor.checkState);
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
