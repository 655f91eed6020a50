package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.measure.Unreadable;
import java.util.Optional;
import org.joda.money.Money;

/**
 * How a yarn is sold.
 *
 * @param each the price of one
 * @param holds the yarn on one, over zero, where it is said
 */
public record PutUp(Money each, Optional<Length> holds) {
  public PutUp {
    if (each.isNegative()) {
      throw new Unreadable(each.toString(), "a price of at least zero");
    }
    if (holds.filter(length -> !length.isPositive()).isPresent()) {
      throw new Unreadable(holds.get().toString(), "a length over zero");
    }
  }

  /**
   * Reads {@code 24.50 EUR}, or {@code 24.50 EUR / 1600 m} where the length of one is said too.
   *
   * @throws Unreadable if it is neither
   */
  public static PutUp parse(String text) {
    int slash = text.indexOf('/');
    return slash < 0
        ? new PutUp(MoneyText.parse(text), Optional.empty())
        : new PutUp(MoneyText.parse(text.substring(0, slash)), Optional.of(Length.parse(text.substring(slash + 1))));
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    return MoneyText.print(each) + holds.map(length -> " / " + length).orElse("");
  }
}
