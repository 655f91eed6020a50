package hankbook.gear;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A way to give a sett: so many ends to the dents of a reed.
 *
 * @param wanted the sett to be given
 * @param reed the reed
 * @param sley ends in its dents
 */
public record SleyChoice(Sett wanted, Reed reed, Sley sley) {
  private static final int LONGEST_REPEAT = 5;
  private static final int MOST_IN_A_DENT = 6;
  private static final Comparator<SleyChoice> NEAREST_THEN_SIMPLEST =
      Comparator.comparing((SleyChoice choice) -> choice.off().abs())
          .thenComparingInt(choice -> choice.sley.dents())
          .thenComparingInt(choice -> choice.sley.fullest())
          .thenComparing(choice -> choice.reed.name());

  /** Every way with these reeds in repeats of at most 5 dents with at most 6 ends in each: the nearest first, of equals the simplest. */
  public static List<SleyChoice> all(Sett wanted, List<Reed> reeds) {
    List<SleyChoice> choices = new ArrayList<>();
    for (Reed reed : reeds) {
      for (int dents = 1; dents <= LONGEST_REPEAT; dents++) {
        for (int ends = dents; ends <= dents * MOST_IN_A_DENT; ends++) {
          if (BigFraction.of(ends, dents).getDenominatorAsInt() == dents) {
            choices.add(new SleyChoice(wanted, reed, Sley.spread(ends, dents)));
          }
        }
      }
    }
    return choices.stream().sorted(NEAREST_THEN_SIMPLEST).toList();
  }

  /** The reed in which a sleying comes nearest; there is at least one reed. */
  public static SleyChoice nearest(Sett wanted, List<Reed> reeds, Sley sley) {
    return reeds.stream().map(reed -> new SleyChoice(wanted, reed, sley)).min(NEAREST_THEN_SIMPLEST).orElseThrow();
  }

  /** Ends to a tenth of a millimetre, exactly. */
  public BigFraction perTenth() {
    return reed.dents().perTenth().multiply(sley.perDent());
  }

  /** The sett it really gives, to two places, half up, in ends to the length that the wanted sett speaks of. */
  public Sett sett() {
    return Sett.of(perTenth(), wanted.span(), 2, RoundingMode.HALF_UP);
  }

  /** By which part of the wanted sett it is closer (over zero) or more open (under zero). */
  public BigFraction off() {
    return perTenth().divide(wanted.perTenth()).subtract(1);
  }

  /** Whether it is off by no more than a part of the wanted sett. */
  public boolean isWithin(BigFraction tolerance) {
    return off().abs().compareTo(tolerance) <= 0;
  }

  /** The width in the reed that so many ends make of it, selvedges aside. */
  public Length widthOf(int ends) {
    return Length.ofTenths(BigFraction.of(ends).divide(perTenth()), RoundingMode.HALF_UP);
  }
}
