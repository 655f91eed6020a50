package hankbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Money and times as they are written. */
class MoneyAndTimeTest {
  @ParameterizedTest
  @CsvSource({"24.50 EUR, 2450 EUR", "24.5 EUR, 2450 EUR", "' 3 JPY', 3 JPY", "0 EUR, 0 EUR", "1.234 TND, 1234 TND"})
  void anAmountIsReadWithItsCurrency(String text, String coins) {
    String[] parts = coins.split(" ", -1);
    assertThat(MoneyText.parse(text)).isEqualTo(Money.ofMinor(CurrencyUnit.of(parts[1]), Long.parseLong(parts[0])));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "24.50", "EUR", "24,50 EUR", "-1 EUR", "24.505 EUR", "1.5 JPY", "24.50 XEURX", "24.50 eur", "24.50  EUR 1", "1e3 EUR"})
  void whatIsNoAmountIsRefused(String text) {
    assertThatThrownBy(() -> MoneyText.parse(text)).isInstanceOf(Unreadable.class).hasMessageEndingWith("wanted an amount and its currency such as 24.50 EUR");
  }

  @ParameterizedTest
  @CsvSource({"45 s, 45000", "2 min, 120000", "1 h 30 min, 5400000", "1.5 h, 5400000", "1h30min20s, 5420000", "2.5 s, 2500", "0 s, 0", "90 min, 5400000"})
  void aTimeIsReadInHoursMinutesAndSeconds(String text, long milliseconds) {
    assertThat(DurationText.parse(text)).isEqualTo(Duration.ofMillis(milliseconds));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "5", "2 m", "30 min 1 h", "-1 s", "1,5 h", "0.0001 s", "1 h 1 h", "999999999999 h"})
  void whatIsNoTimeIsRefused(String text) {
    assertThatThrownBy(() -> DurationText.parse(text)).isInstanceOf(Unreadable.class).hasMessageEndingWith("wanted a time such as 45 s, 2 min or 1 h 30 min");
  }

  @ParameterizedTest
  @CsvSource({"23741, 23.7 s", "59960, 1 min", "62499, 1 min 2 s", "12582729, 3 h 30 min", "0, 0 s", "3599700, 1 h", "3600000, 1 h"})
  void aTimeThatWasWorkedOutIsReadWithoutMoreThanIsKnown(long milliseconds, String text) {
    assertThat(DurationText.rounded(Duration.ofMillis(milliseconds))).isEqualTo(text);
  }

  @Property(seed = "20261301")
  void whatIsPrintedIsReadBackToTheSame(@ForAll @LongRange(max = 99_999_999_999L) long number) {
    assertThat(DurationText.parse(DurationText.print(Duration.ofMillis(number)))).isEqualTo(Duration.ofMillis(number));
    Money money = Money.ofMinor(CurrencyUnit.of("EUR"), number);
    assertThat(MoneyText.parse(MoneyText.print(money))).isEqualTo(money);
  }
}
