package hankbook.gear;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A warp in its reed, dent by dent.
 *
 * @param reed the reed
 * @param sley ends in its dents
 * @param ends all ends, at least 1
 * @param selvedge those at the edges, where they are sleyed by themselves
 */
public record Sleying(Reed reed, Sley sley, int ends, Selvedge selvedge) {
  /**
   * Ends at the two edges that have dents of their own, the odd one at the left.
   *
   * @param ends both edges together, at least 0
   * @param perDent how many go in a dent, at least 1
   */
  public record Selvedge(int ends, int perDent) {
    /** Sleyed like the rest. */
    public static final Selvedge NONE = new Selvedge(0, 1);

    public Selvedge {
      if (ends < 0) {
        throw new Unreadable(Integer.toString(ends), "selvedge ends of at least 0");
      }
      if (perDent < 1) {
        throw new Unreadable(Integer.toString(perDent), "at least 1 selvedge end in a dent");
      }
    }

    int dents() {
      return Math.ceilDiv(ends / 2, perDent) + Math.ceilDiv(ends - ends / 2, perDent);
    }
  }

  public Sleying {
    if (ends < 1 || ends < selvedge.ends()) {
      throw new Unreadable(ends + " ends", Phrase.of("at least 1 end, and no fewer than the {0} of the selvedges", selvedge.ends()));
    }
    int used = sley.dentsFor(ends - selvedge.ends()) + selvedge.dents();
    if (reed.count().isPresent() && used > reed.count().getAsInt()) {
      String has = "at most the " + reed.count().getAsInt() + " that reed " + reed.name() + " has in its " + reed.width().orElseThrow().print(LengthUnit.CENTIMETRE, 1);
      throw new Unreadable(used + " dents for " + ends + " ends sleyed " + sley, has);
    }
  }

  /** A warp whose selvedges are sleyed like the rest. */
  public Sleying(Reed reed, Sley sley, int ends) {
    this(reed, sley, ends, Selvedge.NONE);
  }

  /** Ends that are sleyed in the repeat. */
  public int ground() {
    return ends - selvedge.ends();
  }

  /** Dents used, those of the selvedges too. */
  public int dents() {
    return sley.dentsFor(ground()) + selvedge.dents();
  }

  /** Whole repeats of the sleying. */
  public int repeats() {
    return ground() / sley.endsInRepeat();
  }

  /** Ends that are left over for a repeat that is not whole. */
  public int leftOver() {
    return ground() % sley.endsInRepeat();
  }

  /** The width of the dents used, in tenths of a millimetre, exactly. */
  public BigFraction exactWidth() {
    return reed.widthOf(dents());
  }

  /** The width in the reed that this really gives. */
  public Length width() {
    return Length.ofTenths(exactWidth(), RoundingMode.HALF_UP);
  }

  /** Dents left free before the first one used, so that the warp stands in the middle of the reed; the odd one is left at the other side. */
  public OptionalInt freeBefore() {
    OptionalInt all = reed.count();
    return all.isPresent() ? OptionalInt.of((all.getAsInt() - dents()) / 2) : OptionalInt.empty();
  }

  /** Dents left free after the last one used. */
  public OptionalInt freeAfter() {
    OptionalInt before = freeBefore();
    return before.isPresent() ? OptionalInt.of(reed.count().orElseThrow() - dents() - before.getAsInt()) : before;
  }

  /** How far from the middle of the reed the first dent begins. */
  public Length fromMiddle() {
    return Length.ofTenths(exactWidth().divide(2), RoundingMode.HALF_UP);
  }
}
