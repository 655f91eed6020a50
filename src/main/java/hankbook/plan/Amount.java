package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Sett;
import java.math.RoundingMode;
import java.time.Duration;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A number in the reckoning of a figure, exactly, and what it counts or measures. */
public sealed interface Amount {
  /** The number in the unit it is reckoned in, which each kind names. */
  BigFraction exact();

  /** Ends, picks, strands or pieces; whole but where it is on the way to a whole one. */
  record Count(BigFraction exact) implements Amount {
    public static Count of(long count) {
      return new Count(BigFraction.of(count));
    }
  }

  /** A length, in tenths of a millimetre. */
  record Stretch(BigFraction exact) implements Amount {
    public static Stretch of(Length length) {
      return new Stretch(length.exactTenths());
    }
  }

  /** What something is multiplied or divided by; 1 leaves it as it is. */
  record Factor(BigFraction exact) implements Amount {}

  /** How likely something is, from 0 to 1. */
  record Likelihood(BigFraction exact) implements Amount {
    public static Likelihood of(double chance) {
      return new Likelihood(BigFraction.from(chance));
    }
  }

  /** Threads to a length, as it was entered; reckoned to a tenth of a millimetre. */
  record Density(Sett sett) implements Amount {
    @Override
    public BigFraction exact() {
      return sett.perTenth();
    }
  }

  /** A mass, in milligrams. */
  record Weight(BigFraction exact) implements Amount {
    public static Weight of(Mass mass) {
      return new Weight(BigFraction.of(mass.milligrams()));
    }
  }

  /** A grist; reckoned in milligrams to a tenth of a millimetre. */
  record Fineness(Grist grist) implements Amount {
    private static final int TENTHS_PER_METRE = 10_000;

    @Override
    public BigFraction exact() {
      return grist.tex().divide(TENTHS_PER_METRE);
    }
  }

  /** Money, in the smallest coin of its currency; whole but where it is on the way to a whole one. */
  record Coins(BigFraction exact, CurrencyUnit currency) implements Amount {
    public static Coins of(Money money) {
      return new Coins(BigFraction.of(money.getAmountMinorLong()), money.getCurrencyUnit());
    }

    /** To the smallest coin. */
    public Money money() {
      long coins = Exact.whole(exact, RoundingMode.HALF_UP);
      return Money.ofMinor(currency, coins);
    }
  }

  /** A time of work, in hours. */
  record Hours(BigFraction exact) implements Amount {
    private static final long MILLISECONDS = Duration.ofHours(1).toMillis();

    public static Hours of(Duration time) {
      return new Hours(BigFraction.of(time.toMillis(), MILLISECONDS));
    }

    /** To the millisecond. */
    public Duration time() {
      return Duration.ofMillis(Exact.whole(exact.multiply(MILLISECONDS), RoundingMode.HALF_UP));
    }
  }
}
