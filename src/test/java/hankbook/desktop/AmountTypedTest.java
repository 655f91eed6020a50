package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Unreadable;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Minor units of the currencies are those of ISO 4217: two of EUR and GBP, none of JPY. */
class AmountTypedTest {
  @ParameterizedTest
  @CsvSource({"59.40, EUR 59.40", "3 x 19.80, EUR 59.40", "59.4, EUR 59.40", "60, EUR 60.00", "12.50 GBP, GBP 12.50", "2 x 6.25 gbp, GBP 12.50", "(20 + 4) / 2, EUR 12.00", "60 JPY, JPY 60", "0, EUR 0.00"})
  void anAmountIsInTheCurrencyOfTheBillUnlessItSaysAnother(String typed, String amount) {
    assertThat(AmountTyped.read(typed, CurrencyUnit.EUR)).isEqualTo(Money.parse(amount));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,33", "-5", "10 / 3", "0.005", "60.5 JPY", "3 x 70 cm", "100000000000", "twelve", "5 XQX", "EUR", "1e3"})
  void whatIsNotWholeInTheSmallestCoinIsRefusedAndNeverRounded(String typed) {
    assertThatThrownBy(() -> AmountTyped.read(typed, CurrencyUnit.EUR)).isInstanceOf(Unreadable.class);
  }
}
