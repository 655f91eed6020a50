package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Setting;
import hankbook.cost.ValueMethod;
import hankbook.store.Vendor;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What the sample studio's yarn is worth, in either database. Its priced skeins cost 931.30 EUR; three have no price. */
@ParameterizedClass
@EnumSource
class ValueTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  ValueTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    SampleStudio.fill(studio);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void allThatWasPaidIsInTheHouseAndTheUnpricedStandApart() {
    ValuedStock stock = stock(Optional.empty()).getFirst();
    assertThat(stock.paid().paid()).isEqualTo(stock.paid().accounted()).isEqualTo(stock.value().total().cost().plus(stock.value().ordered().cost()));
    assertThat(stock.withoutCost().keySet()).containsExactly("S005", "S053", "S054");
    for (ValueBy by : ValueBy.values()) {
      Money sum = stock.rows(by).stream().map(row -> row.worth().cost()).reduce(Money.zero(stock.value().currency()), Money::plus);
      assertThat(sum).as(by.name()).isEqualTo(stock.total().worth().cost());
    }
  }

  @Test
  void whatAPlanTookStaysAccountedForAndTheDayBeforeStaysAsItWas() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Quay towels", true);
    new Draw(studio).plan(UUID.randomUUID(), "Quay towels");
    ValuedStock now = stock(Optional.empty()).getFirst();
    assertThat(now.paid().plan("Quay towels").isPositive()).isTrue();
    assertThat(now.paid().accounted()).isEqualTo(now.paid().paid());
    assertThat(now.rows(ValueBy.PLACE)).extracting(ValueRow::name).contains("on the loom for Quay towels", "shelf");
    ValuedStock before = stock(Optional.of(LocalDate.of(2026, 3, 13))).getFirst();
    assertThat(before.paid().plans()).isEmpty();
  }

  @Test
  void theSettingNamesTheMethodWhereNoneIsAskedFor() throws Exception {
    new Settings(studio).set(Setting.VALUE_METHOD, "FIFO");
    assertThat(new Value(studio).stock(Optional.empty(), Optional.empty()).getFirst().value().method()).isEqualTo(ValueMethod.FIFO);
    assertThat(new Value(studio).stock(Optional.empty(), Optional.of(ValueMethod.AVERAGE)).getFirst().value().method()).isEqualTo(ValueMethod.AVERAGE);
  }

  private List<ValuedStock> stock(Optional<LocalDate> on) {
    return new Value(studio).stock(on, Optional.of(ValueMethod.IDENTIFIED));
  }
}
