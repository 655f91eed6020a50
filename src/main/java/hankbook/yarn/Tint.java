package hankbook.yarn;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * The plain words for colours. A colour may be called by several: what one eye calls green another calls blue. Where each word ends in CIELAB is common practice and
 * drawn generously.
 */
public enum Tint {
  RED(Hues.from(355).to(50), 0, 65, 12),
  ORANGE(Hues.from(45).to(80), 45, 95, 18),
  YELLOW(Hues.from(62).to(115), 55, 100, 9),
  GREEN(Hues.from(105).to(205), 0, 98, 9),
  TURQUOISE(Hues.from(170).to(235), 35, 97, 9),
  BLUE(Hues.from(195).to(312), 0, 93, 7),
  PURPLE(Hues.from(300).to(356), 0, 92, 9),
  PINK(Hues.from(325).to(60), 55, 100, 9),
  BROWN(Hues.from(30).to(105), 0, 80, 9),
  GREY(Hues.ALL, 22, 91, 0, 12),
  BLACK(Hues.ALL, 0, 25, 0, 12),
  WHITE(Hues.ALL, 89, 101, 0, 16);

  @SuppressWarnings("ImmutableEnumChecker") // A record of two numbers.
  private final Hues hues;
  private final double darkest;
  private final double lightest;
  private final double dullest;
  private final double strongest;

  Tint(Hues hues, double darkest, double lightest, double dullest) {
    this(hues, darkest, lightest, dullest, Double.POSITIVE_INFINITY);
  }

  Tint(Hues hues, double darkest, double lightest, double dullest, double strongest) {
    this.hues = hues;
    this.darkest = darkest;
    this.lightest = lightest;
    this.dullest = dullest;
    this.strongest = strongest;
  }

  /** An arc of the round of hues, in degrees, both ends in it. */
  private record Hues(double first, double last) {
    static final Hues ALL = new Hues(0, 360);

    static Hues from(double first) {
      return new Hues(first, first);
    }

    Hues to(double end) {
      return new Hues(first, end);
    }

    boolean have(double hue) {
      return first <= last ? first <= hue && hue <= last : first <= hue || hue <= last;
    }
  }

  /** Whether a colour may be called so. */
  public boolean names(Colour colour) {
    return hues.have(colour.hue()) && darkest <= colour.lightness() && colour.lightness() < lightest && dullest <= colour.chroma() && colour.chroma() < strongest;
  }

  /** All the words for a colour. */
  public static Set<Tint> of(Colour colour) {
    Set<Tint> tints = EnumSet.noneOf(Tint.class);
    Arrays.stream(values()).filter(tint -> tint.names(colour)).forEach(tints::add);
    return Collections.unmodifiableSet(tints);
  }

  /** The word. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
