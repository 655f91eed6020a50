package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Audit;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Finding;
import hankbook.measure.Length;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Someone takes the guards away, changes the tables behind the program's back, and the audit tells. */
@ParameterizedClass
@EnumSource
class TamperingTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String THIRD = "(select id from entry where number = 3)";

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Studio studio;

  TamperingTest(Vendor vendor) {
    this.vendor = vendor;
  }

  /** Entries 1 and 2 receive, 3 and 4 part with, 5 takes 4 back. */
  @BeforeEach
  void openWithFiveEntries() throws Exception {
    address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida", NOON);
    new Receive(studio).file("stock.csv", "code,yarn,colour,length\nS1,Moor,Rust,100 m\nS2,Moor,Rust,80 m\n");
    new PartWith(studio).skein(new UUID(0, 3), "S1", Length.metres(30), "to a friend");
    new PartWith(studio).skein(new UUID(0, 4), "S2", Length.metres(20), "sold");
    new Reverse(studio).numbered(new UUID(0, 5), 4, "not paid");
    assertThat(findings()).isEmpty();
    vendor.disarm(address);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update entry set note = 'to a stranger' where number = 3",
        "update entry set author = 'Eve' where number = 3",
        "update entry set dated = date '2026-03-15' where number = 3",
        "update entry set kind = 'RECOUNT' where number = 3",
        "update entry set hash = 'f' where number = 3",
        "update entry set previous_hash = 'f' where number = 3",
        "update transfer set tenths = tenths - 1 where entry = " + THIRD,
        "update transfer set skein = 'S2' where entry = " + THIRD,
        "update transfer set to_place = 'RECOUNT' where entry = " + THIRD,
        "update transfer set to_place = 'LOOM', to_plan = 'Scarf' where entry = " + THIRD,
        "insert into transfer (entry, line, skein, from_place, from_plan, to_place, to_plan, tenths) select id, 2, 'S1', 'SHELF', '', 'AWAY', '', 1 from entry where number = 3"
      })
  void aChangedEntryIsNamed(String change) throws Exception {
    Vendor.run(address, change);
    assertThat(audit().firstBad()).map(ChainedEntry::number).contains(3L);
    assertThat(findings().getFirst()).startsWith("Entry 3 (").contains(") is not as it was written: ");
  }

  @Test
  void theEntryAfterOneThatWasTakenOutIsNamed() throws Exception {
    Vendor.run(address, "delete from transfer where entry = " + THIRD, "delete from entry where number = 3");
    assertThat(audit().firstBad()).map(ChainedEntry::number).contains(4L);
    assertThat(findings()).contains("S1: the shelf is kept as 70 m, but the entries add up to 100 m.");
  }

  @Test
  void theLastEntryTakenOutWithItsBalancesIsMissed() throws Exception {
    Vendor.run(
        address, "delete from transfer where entry = (select id from entry where number = 5)", "delete from entry where number = 5",
        "update balance set tenths = tenths - 200000 where skein = 'S2' and place = 'SHELF'",
        "update balance set tenths = tenths + 200000 where skein = 'S2' and place = 'AWAY'");
    assertThat(findings()).containsExactly("The ledger says it holds 5 entries, but 4 are there.");
  }

  @Test
  void aChangedEndOfTheChainIsFound() throws Exception {
    Vendor.run(address, "update chain_end set last_hash = 'f'");
    assertThat(findings()).containsExactly("The last of the 5 entries is not the one that the ledger says it ends with.");
  }

  @Test
  void aChangedBalanceIsFound() throws Exception {
    Vendor.run(address, "update balance set tenths = tenths + 10000 where skein = 'S1' and place = 'SHELF'");
    assertThat(findings())
        .containsExactly(
            "The balances of S1 sum to 1 m over all places; they should sum to 0 m.", "S1: the shelf is kept as 71 m, but the entries add up to 70 m.");
  }

  @Test
  void aMissingBalanceIsFound() throws Exception {
    Vendor.run(address, "delete from balance where skein = 'S1' and place = 'AWAY'");
    assertThat(findings()).contains("S1: what left the house is kept as 0 m, but the entries add up to 30 m.");
  }

  @Test
  void anEntryWithoutTransfersIsIllegible() throws Exception {
    Vendor.run(address, "delete from transfer where entry = " + THIRD);
    assertThat(audit().findings())
        .containsExactly(new Finding.Illegible(3, new UUID(0, 3), "transfers is \"[]\", wanted at least one"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update entry set author = ' ' where number = 3",
        "update entry set dated = date '0001-01-01' - 366 where number = 3",
        "update entry set note = '' where number = 5",
        "update transfer set from_plan = to_plan, from_place = to_place, to_place = 'SHELF', skein = ' S' where entry = " + THIRD,
        "update balance set skein = ' S' where skein = 'S1' and place = 'AWAY'"
      })
  void anIllegibleRowIsAFinding(String change) throws Exception {
    String told = "yarn, colour, hex, fibre, grist, form, opened, lot, location, recorded_at";
    Vendor.run(address, "insert into skein (code, " + told + ") select ' S', " + told + " from skein where code = 'S1'", change);
    assertThat(audit().findings()).singleElement().isInstanceOfAny(Finding.Illegible.class, Finding.IllegibleBalance.class);
    assertThat(findings().getFirst()).contains("cannot be read: ");
  }

  private Audit audit() {
    return new AuditLedger(studio).audit().audit();
  }

  private List<String> findings() {
    return audit().findings().stream().map(Finding::message).toList();
  }
}
