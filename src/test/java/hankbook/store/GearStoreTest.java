package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Looms and reeds in either database. */
@ParameterizedClass
@EnumSource
class GearStoreTest {
  private static final Loom TABLE = new Loom("Table loom", Length.parse("60 cm"), Length.parse("45 cm"), 4);
  private static final Reed TWELVE = new Reed("12/in", Sett.perInch(12), Optional.of(Length.parse("90 cm")));
  private static final Reed UNSAID = new Reed("Long fifty", Sett.parse("50/10 cm"), Optional.empty());

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Store store;

  GearStoreTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    address = vendor.ledger(folder);
    store = Store.open(address);
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void whatWasEnteredIsReadBackAsItWasAfterTheLedgerIsOpenedAgain() throws Exception {
    keep(TABLE, false);
    keep(UNSAID, false);
    keep(TWELVE, false);
    store.close();
    store = Store.open(address);
    assertThat(looms(store)).containsExactly(TABLE);
    assertThat(reeds()).containsExactly(TWELVE, UNSAID);
  }

  @Test
  void whatIsPutAwayIsNotListedAndMayComeAgain() {
    keep(TABLE, false);
    keep(TABLE, true);
    assertThat(looms(store)).isEmpty();
    keep(TABLE, false);
    assertThat(looms(store)).containsExactly(TABLE);
    keep(TWELVE, false);
    keep(TWELVE, true);
    assertThat(reeds()).isEmpty();
    keep(TWELVE, false);
    assertThat(reeds()).containsExactly(TWELVE);
  }

  @Test
  void everyVersionStaysAndTheSameIsNotKeptTwice() throws Exception {
    keep(TABLE, false);
    keep(TABLE, false);
    keep(new Loom("Table loom", Length.parse("70 cm"), Length.parse("45 cm"), 8), false);
    keep(new Loom("Table loom", Length.parse("70 cm"), Length.parse("45 cm"), 8), true);
    assertThat(counted("select count(*) from loom_version")).isEqualTo(3);
    assertThat(counted("select width_tenths from loom_version where version = 1")).isEqualTo(6000);
  }

  @Test
  void aLedgerFromBeforeThereWereLoomsIsBroughtUpWithAllThatIsInIt() throws Exception {
    LedgerAddress old = vendor.blank(folder.resolve("old"));
    Flyway.configure(getClass().getClassLoader())
        .dataSource(Connections.source(old))
        .locations("classpath:db/migration", "classpath:db/" + vendor.folder)
        .target("2")
        .load()
        .migrate();
    Vendor.run(old, "insert into plan_version (plan, version, body, author, recorded_at) values ('Scarf', 1, '{}', 'Ida', timestamp '2026-03-14 12:00:00')");
    try (Store brought = Store.open(old)) {
      List<String> plans = brought.read(session -> session.plans().names());
      assertThat(plans).containsExactly("Scarf");
      assertThat(looms(brought)).isEmpty();
      add(brought, CORAL);
      assertThat(audit(brought)).isEmpty();
    }
  }

  private static List<Loom> looms(Store store) {
    return store.read(session -> session.looms().all());
  }

  private List<Reed> reeds() {
    return store.read(session -> session.reeds().all());
  }

  private int counted(String query) throws Exception {
    try (var connection = Vendor.behind(address); var sql = connection.createStatement(); ResultSet row = sql.executeQuery(query)) {
      row.next();
      return row.getInt(1);
    }
  }

  private void keep(Loom loom, boolean putAway) {
    store.write(session -> {
      session.looms().keep(loom, putAway, "Ida", NOON);
      return loom;
    });
  }

  private void keep(Reed reed, boolean putAway) {
    store.write(session -> {
      session.reeds().keep(reed, putAway, "Ida", NOON);
      return reed;
    });
  }
}
