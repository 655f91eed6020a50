package hankbook.cost;

import hankbook.measure.Exact;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** How a price is made from a cost. A margin is a part of the price, a markup a part of the cost: 40 % of the one is not 40 % of the other. */
public sealed interface Pricing {
  /** The price of which the cost leaves this part: cost / (1 − margin). Under 100 %. */
  record Margin(Percentage part) implements Pricing {
    public Margin {
      plain(part);
      if (part.fraction().compareTo(BigFraction.ONE) >= 0) {
        throw new Unreadable(part.toString(), "a margin of the price under 100 %");
      }
    }

    @Override
    public BigFraction factor() {
      return BigFraction.ONE.divide(part.remaining());
    }

    @Override
    public Phrase phrase() {
      return Phrase.of("a margin of {0} of the price", said(part));
    }
  }

  /** The cost and this part of it: cost × (1 + markup). */
  record Markup(Percentage part) implements Pricing {
    public Markup {
      plain(part);
    }

    @Override
    public BigFraction factor() {
      return part.growth();
    }

    @Override
    public Phrase phrase() {
      return Phrase.of("a markup of {0} on the cost", said(part));
    }
  }

  private static void plain(Percentage part) {
    if (part.base() != Percentage.Base.UNSAID) {
      throw new Unreadable(part.toString(), "a percentage such as 40 %");
    }
  }

  /** What a cost is multiplied by, exactly. */
  BigFraction factor();

  private static Phrase.As said(Percentage part) {
    return new Phrase.As(new Phrase.Percent(part.fraction(), 4), part.toString());
  }

  /** As it is said. */
  default String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  Phrase phrase();

  /** The price for a cost, to the nearest smallest coin, half a coin up. */
  default Money price(Money cost) {
    return Money.ofMinor(cost.getCurrencyUnit(), Exact.whole(factor().multiply(cost.getAmountMinorLong()), RoundingMode.HALF_UP));
  }
}
