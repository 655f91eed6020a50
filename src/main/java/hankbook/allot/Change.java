package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Width;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a remedy changes. */
public sealed interface Change {
  /**
   * How little it changes: the part given up of what the weaver asked for, from 0 to 1. For a yarn in the place of another, what differs
   * more: the part by which the grist does, or the colour difference over 100, which is black from white; 1 where a colour is not known.
   */
  BigFraction givenUp();

  /** Its name in files. */
  String key();

  /** Less warp for sampling; the warp is the whole of which it is a part. */
  record LessSampling(Length from, Length to, Length warp) implements Change {
    @Override
    public BigFraction givenUp() {
      return part(from.minus(to).tenthsOfMillimetre(), warp.tenthsOfMillimetre());
    }

    @Override
    public String key() {
      return "lessSampling";
    }
  }

  /** Fewer ends to the same width; so many ends then, and whether they are counted plainly that were counted by sections. */
  record OpenerSett(Sett from, Sett to, int ends, boolean sectionsLost) implements Change {
    @Override
    public BigFraction givenUp() {
      return BigFraction.ONE.subtract(to.perTenth().divide(from.perTenth()));
    }

    @Override
    public String key() {
      return "openerSett";
    }
  }

  /** Fewer picks to the same length. */
  record FewerPicks(Sett from, Sett to) implements Change {
    @Override
    public BigFraction givenUp() {
      return BigFraction.ONE.subtract(to.perTenth().divide(from.perTenth()));
    }

    @Override
    public String key() {
      return "fewerPicks";
    }
  }

  /**
   * A narrower warp of the same sett: ends and width in the reed, the finished width of the widest piece, and whether ends are counted
   * plainly that were counted by sections.
   */
  record Narrower(Width from, Width to, Length finishedFrom, Length finishedTo, boolean sectionsLost) implements Change {
    @Override
    public BigFraction givenUp() {
      return BigFraction.ONE.subtract(to.inReedTenths().divide(from.inReedTenths()));
    }

    @Override
    public String key() {
      return "narrower";
    }
  }

  /** Shorter pieces, kind by kind: the longest rules, the others keep their proportion to it. */
  record ShorterPieces(List<Length> from, List<Length> to) implements Change {
    public ShorterPieces {
      from = List.copyOf(from);
      to = List.copyOf(to);
    }

    /** The finished length of the longest, before. */
    public Length longestFrom() {
      return longest(from);
    }

    /** The finished length of the longest, after. */
    public Length longestTo() {
      return longest(to);
    }

    private static Length longest(List<Length> lengths) {
      return lengths.stream().reduce(Length.ZERO, Length::max);
    }

    @Override
    public BigFraction givenUp() {
      return part(longestFrom().minus(longestTo()).tenthsOfMillimetre(), longestFrom().tenthsOfMillimetre());
    }

    @Override
    public String key() {
      return "shorterPieces";
    }
  }

  /** A shorter warp, and with it less cloth. */
  record ShorterWarp(Length from, Length to) implements Change {
    @Override
    public BigFraction givenUp() {
      return part(from.minus(to).tenthsOfMillimetre(), from.tenthsOfMillimetre());
    }

    @Override
    public String key() {
      return "shorterWarp";
    }
  }

  /** Fewer of one kind of piece, by its name. */
  record FewerPieces(String piece, int from, int to) implements Change {
    @Override
    public BigFraction givenUp() {
      return part(from - to, from);
    }

    @Override
    public String key() {
      return "fewerPieces";
    }
  }

  /** A yarn of the shelf in the place of a short one. */
  record OtherYarn(StandIn standIn) implements Change {
    private static final int BLACK_FROM_WHITE = 100;
    private static final int FINENESS = 100;

    @Override
    public BigFraction givenUp() {
      BigFraction colour =
          standIn.difference().map(difference -> part(Math.round(difference.deltaE() * FINENESS), BLACK_FROM_WHITE * FINENESS)).orElse(BigFraction.ONE);
      BigFraction grist = standIn.heavier().map(BigFraction::abs).orElse(BigFraction.ZERO);
      return colour.compareTo(grist) >= 0 ? colour : grist;
    }

    @Override
    public String key() {
      return "otherYarn";
    }
  }

  /** More of the yarns that are short, at least one: the plan stays as it is. */
  record Buying(List<Purchase> purchases) implements Change {
    public Buying {
      purchases = List.copyOf(purchases);
    }

    @Override
    public BigFraction givenUp() {
      return BigFraction.ZERO;
    }

    @Override
    public String key() {
      return "buy";
    }
  }

  private static BigFraction part(long given, long whole) {
    return BigFraction.of(given, whole);
  }
}
