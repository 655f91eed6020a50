package hankbook.reckon;

import hankbook.measure.Exact;
import hankbook.measure.Phrase;
import hankbook.plan.Allowances;
import org.apache.commons.numbers.fraction.BigFraction;

/** The ways of cloth and loom that show when a cloth is made, each as a part of something. What is likely of each is common practice. */
public enum Way {
  /** How much longer the warp is than the cloth off the loom it is woven up in. */
  WARP_TAKE_UP("warpTakeUp", "warp take-up", "the warp's length as wound, its loom waste, and the cloth's length off the loom", -5, 100),
  /** How much longer the weft's yarn is than the width in the reed, pick by pick. */
  WEFT_TAKE_UP("weftTakeUp", "weft take-up", "picks counted and the width in the reed", -5, 100),
  /** How much narrower the cloth is than the reed. */
  DRAW_IN("drawIn", "draw-in", "the width in the reed, and at the fell or off the loom", -3, 60),
  /** Lost in length from the loom to the finished cloth. */
  LENGTH_SHRINKAGE("lengthShrinkage", "length shrinkage", "the length off the loom and finished", -10, 80),
  /** Lost in width from the loom to the finished cloth. */
  WIDTH_SHRINKAGE("widthShrinkage", "width shrinkage", "the width on or off the loom, and finished", -10, 80),
  /** Yarn lost in winding, as a part of what lies in the warp. */
  WINDING("winding", "winding", "the warp's length as wound, and a yarn that is in the warp alone", -10, 50);

  private final String key;
  private final String words;
  private final String wants;
  private final int least;
  private final int most;

  Way(String key, String words, String wants, int least, int most) {
    this.key = key;
    this.words = words;
    this.wants = wants;
    this.least = least;
    this.most = most;
  }

  /** The allowance's name in files. */
  public String key() {
    return key;
  }

  /** What it is called. */
  public String words() {
    return words;
  }

  /** What has to be measured to know it. */
  public String wants() {
    return wants;
  }

  /** What a plan allows for it, as a part in the same meaning. */
  public BigFraction planned(Allowances allowances) {
    return switch (this) {
      case WARP_TAKE_UP -> allowances.warpTakeUp().yarnPerCloth().subtract(BigFraction.ONE);
      case WEFT_TAKE_UP -> allowances.weftTakeUp().yarnPerCloth().subtract(BigFraction.ONE);
      case DRAW_IN -> allowances.drawIn().fraction();
      case LENGTH_SHRINKAGE -> allowances.lengthShrinkage().fraction();
      case WIDTH_SHRINKAGE -> allowances.widthShrinkage().fraction();
      case WINDING -> allowances.winding().fraction();
    };
  }

  /** Whether a cloth can be so: a little under zero is a measurement's error, or a cloth that grew. */
  public boolean likely(BigFraction part) {
    // Not compareTo, which takes the greater of two fractions under zero for the smaller.
    return part.subtract(BigFraction.of(least, 100)).signum() >= 0 && part.subtract(BigFraction.of(most, 100)).signum() <= 0;
  }

  /** What is likely, in words. */
  public Phrase likely() {
    return Phrase.of("from {0} % to {1} %", least, most);
  }

  /** A part as a percentage to read, to two places. */
  public static String percent(BigFraction part) {
    return Exact.plain(part.multiply(100), 2) + " %";
  }
}
