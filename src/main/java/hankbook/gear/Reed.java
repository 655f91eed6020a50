package hankbook.gear;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A reed.
 *
 * @param name what it is called, not blank; often its dents
 * @param dents to a length, such as 12 to the inch or 50 to 10 cm; 1 to 1000 to 10 cm
 * @param width over zero; empty where nobody said it, and then it takes any warp
 */
public record Reed(String name, Sett dents, Optional<Length> width) {
  private static final BigFraction TEN_CENTIMETRES = Length.of(10, LengthUnit.CENTIMETRE).exactTenths();
  private static final BigFraction FINEST = BigFraction.of(1000);
  private static final String WANTED = "dents to a length such as 12/in or 50/10 cm";

  public Reed {
    name = OneLine.of(name);
    if (name.isEmpty()) {
      throw new Unreadable(name, "a name for the reed");
    }
    BigFraction inTenCentimetres = dents.threadsIn(TEN_CENTIMETRES);
    if (inTenCentimetres.compareTo(BigFraction.ONE) < 0 || inTenCentimetres.compareTo(FINEST) > 0) {
      throw new Unreadable(dents.toString(), "a reed of 1 to 1000 dents to 10 cm");
    }
    if (width.isPresent() && !width.get().isPositive()) {
      throw new Unreadable(width.get().toString(), "a reed's width over zero");
    }
  }

  /**
   * Reads the dents of a reed.
   *
   * @throws Unreadable if they are none
   */
  public static Sett dents(String text) {
    try {
      return Sett.parse(text);
    } catch (Unreadable unreadable) {
      throw new Unreadable(unreadable.found(), WANTED);
    }
  }

  /** A reed of these dents and of any width, where the text says dents. */
  public static Optional<Reed> outright(String text) {
    try {
      Sett dents = Sett.parse(text);
      return Optional.of(new Reed(dents.toString(), dents, Optional.empty()));
    } catch (Unreadable aName) {
      return Optional.empty();
    }
  }

  /** All dents it has: whole ones. */
  public OptionalInt count() {
    return width.map(all -> OptionalInt.of((int) Math.min(Integer.MAX_VALUE, Exact.whole(dents.threadsIn(all.exactTenths()), RoundingMode.FLOOR)))).orElseGet(OptionalInt::empty);
  }

  /** Whether a warp so wide stands in it. */
  public boolean takes(Length warp) {
    return width.map(all -> all.compareTo(warp) >= 0).orElse(true);
  }

  /** The width that so many dents take, in tenths of a millimetre, exactly. */
  public BigFraction widthOf(int count) {
    return dents.widthOf(count);
  }
}
