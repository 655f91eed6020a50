package hankbook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SchemaTest {
  @ParameterizedTest
  @EnumSource
  void theNewestVersionIsThatOfTheNewestFileOnTheClassPath(Vendor vendor) {
    assertThat(Stream.of("migration", vendor.folder).flatMap(SchemaTest::versions)).contains(Schema.NEWEST).doesNotHaveDuplicates().allMatch(v -> v <= Schema.NEWEST);
  }

  /** The second schema was the first that anyone kept a ledger in. */
  @ParameterizedTest
  @EnumSource
  void aLedgerOfTheSecondSchemaIsBroughtUpWithAllThatIsInIt(Vendor vendor, @TempDir Path folder) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    Flyway.configure(Schema.class.getClassLoader()).dataSource(Connections.source(address)).locations("classpath:db/migration", "classpath:db/" + vendor.folder).target("2").load().migrate();
    Vendor.run(address,
        "insert into skein (code, yarn, colour, hex, fibre, grist, form, gross_milligrams, tare_milligrams, opened, lot, location, recorded_at)"
            + " values ('S 1', 'Fjara', 'Ash', '', 'wool', 'tex 100', 'CONE', 110000, 10000, false, 'A', '', timestamp with time zone '2026-03-14 12:00:00+00')",
        "insert into plan_version (plan, version, body, author, recorded_at) values ('Scarf', 1, '{}', 'Ida', timestamp with time zone '2026-03-14 12:00:00+00')");
    try (Store store = Store.open(address)) {
      Skein skein = store.read(session -> session.skeins().find("S 1")).orElseThrow();
      assertThat(skein.holds()).isEqualTo(Length.metres(1000));
      assertThat(skein.turns()).isEmpty();
      List<String> plans = store.read(session -> session.plans().names());
      assertThat(plans).containsExactly("Scarf");
      Map<String, String> settings = store.read(session -> session.settings().all());
      assertThat(settings).isEmpty();
    }
    assertThat(catchThrowableOfType(SQLException.class, () -> Vendor.run(address, "update skein set lot = 'B'")).getSQLState()).isEqualTo("P0001");
  }

  @ParameterizedTest
  @EnumSource
  void aLedgerOfTheEighthSchemaHasItsSkeinsDescribed(Vendor vendor, @TempDir Path folder) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    Flyway.configure(Schema.class.getClassLoader()).dataSource(Connections.source(address)).locations("classpath:db/migration", "classpath:db/" + vendor.folder).target("8").load().migrate();
    Vendor.run(address,
        "insert into skein (code, yarn, colour, hex, fibre, form, label_tenths, turns, reel_tenths, opened, lot, location, recorded_at)"
            + " values ('S 1', 'Fjara', 'Ash', '', 'wool', 'SKEIN', 1000000, 50, 20000, false, 'A', '', timestamp with time zone '2026-03-14 12:00:00+00')");
    try (Store store = Store.open(address)) {
      Skein before = store.read(session -> session.skeins().find("S 1")).orElseThrow();
      assertThat(before.lot()).isEqualTo("A");
      List<Skein> said = List.of(Examples.described("S 1", "B"), Examples.described("S 1", "C"));
      said.forEach(skein -> assertThat(store.<Boolean>write(session -> session.skeins().describe(skein, "Ida", Examples.NOON))).isTrue());
      assertThat(store.<Boolean>write(session -> session.skeins().describe(said.getLast(), "Ida", Examples.NOON))).as("the same once more").isFalse();
      Skein now = store.read(session -> session.skeins().find("S 1")).orElseThrow();
      List<Skein> all = store.read(session -> session.skeins().all());
      assertThat(now.lot()).as("the newest counts").isEqualTo("C");
      assertThat(all).containsExactly(now);
      assertThat(now.yarn()).as("no version says which yarn it is, nor how long").isEqualTo(before.yarn());
      assertThat(now.measures()).isEqualTo(before.measures());
      assertThat(store.<Boolean>read(session -> session.skeins().wasEver(before) && session.skeins().wasEver(now))).isTrue();
      assertThat(store.<Boolean>read(session -> session.skeins().wasEver(Examples.described("S 1", "C")))).as("of another yarn").isFalse();
    }
  }

  @ParameterizedTest
  @EnumSource
  void aLedgerOfTheTenthSchemaTakesWhatWasPaid(Vendor vendor, @TempDir Path folder) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    Flyway.configure(Schema.class.getClassLoader()).dataSource(Connections.source(address)).locations("classpath:db/migration", "classpath:db/" + vendor.folder).target("10").load().migrate();
    Vendor.run(address,
        "insert into skein (code, yarn, colour, hex, fibre, form, opened, lot, location, cost_minor, currency, recorded_at)"
            + " values ('S 1', 'Fjara', 'Ash', '', 'wool', 'SKEIN', false, 'A', '', 500, 'SEK', timestamp with time zone '2026-03-14 12:00:00+00')");
    try (Store store = Store.open(address)) {
      assertThat(store.<Integer>read(session -> session.purchases().next())).isEqualTo(1);
      store.write(session -> {
        session.purchases().keep(1, Examples.paid("S 1"), true, "", "Ida", Examples.NOON);
        return session;
      });
      assertThat(store.<Boolean>read(session -> session.purchases().thatPaidFor("S 1").isPresent())).isTrue();
    }
  }

  private static Stream<Integer> versions(String folder) {
    try (Stream<Path> files = Files.list(Path.of(Objects.requireNonNull(Schema.class.getResource("/db/" + folder)).toURI()))) {
      List<Integer> versions = files.map(file -> String.valueOf(file.getFileName())).map(name -> Integer.valueOf(name.replaceFirst("V(\\d+)__.*\\.sql", "$1"))).toList();
      return versions.stream();
    } catch (IOException | URISyntaxException broken) {
      throw new AssertionError(broken);
    }
  }
}
