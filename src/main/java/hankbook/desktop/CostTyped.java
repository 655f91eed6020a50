package hankbook.desktop;

import hankbook.allot.PutUp;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.studio.YarnToPrice;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What is typed to cost a plan otherwise; each throws {@link Unreadable} where a text is none. */
final class CostTyped {
  private CostTyped() {}

  /** A percentage, with or without its sign. */
  static Percentage percentage(String text) {
    Percentage percentage = Percentage.parse(text.contains("%") ? text : text + " %");
    if (percentage.base() != Percentage.Base.UNSAID) {
      throw new Unreadable(text, "a percentage such as 10 %");
    }
    return percentage;
  }

  /** An amount in the currency of the house, with its letters or without. */
  static Money amount(String text, CurrencyUnit currency) {
    Money amount = AmountTyped.read(text, currency);
    if (!amount.getCurrencyUnit().equals(currency)) {
      throw new Unreadable(text, Phrase.of("an amount in {0}", currency));
    }
    return amount;
  }

  /** How many pieces. */
  static int pieces(String text) {
    int count = Arithmetic.count(text);
    if (count < 1) {
      throw new Unreadable(text, "at least 1");
    }
    return count;
  }

  /** The price of a put-up, and after a slash what is on one, where that is another length than the shelf shows. */
  static PutUp putUp(String text, YarnToPrice yarn, CurrencyUnit currency) {
    int slash = text.indexOf('/');
    Money each = amount(slash < 0 ? text : text.substring(0, slash), currency);
    Optional<Length> said = slash < 0 ? Optional.empty() : Optional.of(Length.parse(text.substring(slash + 1)));
    if (yarn.unknown() && said.or(yarn::holds).isEmpty()) {
      throw new Unreadable(text, "a price and what is on one, such as 24.50 / 1600 m");
    }
    return new PutUp(each, yarn.unknown() ? said.or(yarn::holds) : said);
  }
}
