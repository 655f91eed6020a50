package hankbook.gear;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How closely a yarn may be set in a weave. The fullest sett is diameters × E/(E + I) (T. R. Ashenhurst); a working sett is a part of it,
 * about three quarters in handweaving. Setts are given to a tenth of an end, rounded down: nothing goes beyond the fullest.
 *
 * @param diameters of the yarn
 * @param weave the weave
 * @param part of the fullest sett that is worked with, over 0 to 1
 */
public record SettAdvice(Diameters diameters, Weave weave, BigFraction part) {
  /** What handweavers work with. */
  public static final BigFraction THREE_QUARTERS = BigFraction.of(3, 4);

  public SettAdvice {
    if (part.signum() <= 0 || part.compareTo(BigFraction.ONE) > 0) {
      throw new Unreadable(Exact.plain(part, 6), "a part of the fullest sett over 0, to 1, such as 3/4");
    }
  }

  /** The closest sett that the weave allows, in ends to a length. */
  public Sett fullest(Length span) {
    return down(exactFullest(), span);
  }

  /** The sett to begin with, in ends to a length. */
  public Sett working(Length span) {
    return down(exactFullest().multiply(part), span);
  }

  private BigFraction exactFullest() {
    return diameters.in(new Length(1)).multiply(weave.fullness());
  }

  private static Sett down(BigFraction perTenth, Length span) {
    if (perTenth.multiply(span.tenthsOfMillimetre()).compareTo(BigFraction.of(1, 10)) < 0) {
      throw new Unreadable("a yarn so heavy that not a tenth of an end lies in " + span.print(LengthUnit.CENTIMETRE, 2), "a finer one");
    }
    return Sett.of(perTenth, span, 1, RoundingMode.DOWN);
  }
}
