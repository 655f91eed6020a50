package hankbook.measure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A way of numbering yarn. Indirect systems count lengths to a mass (a higher number is finer), direct systems mass to a length.
 *
 * <p>Lengths of the hank, in yards to the pound, after ASTM D2260-03(2013), Table 1; the fold rules after J. T. Taylor, Cotton Weaving
 * and Designing, 6th ed. 1909: in cotton, worsted and linen the number names the single thread, in spun silk the folded yarn. The
 * woollen cut of 300 yards is that of the GNU Units table. Tex and the metric count follow ISO 1144 and ISO 2947.
 */
public enum NumberingSystem {
  METRIC("Nm", Form.METRES_PER_GRAM, "1", Fold.DIVIDES),
  COTTON("cotton", Form.YARDS_PER_POUND, "840", Fold.DIVIDES),
  WORSTED("worsted", Form.YARDS_PER_POUND, "560", Fold.DIVIDES),
  LINEN("lea", Form.YARDS_PER_POUND, "300", Fold.DIVIDES),
  SPUN_SILK("spun silk", Form.YARDS_PER_POUND, "840", Fold.IS_IN_THE_NUMBER),
  WOOLLEN_RUN("run", Form.YARDS_PER_POUND, "1600", Fold.DIVIDES),
  WOOLLEN_CUT("cut", Form.YARDS_PER_POUND, "300", Fold.DIVIDES),
  TEX("tex", Form.GRAMS_PER_KILOMETRE, "1", Fold.NONE),
  DENIER("den", Form.GRAMS_PER_KILOMETRE, "1/9", Fold.NONE),
  YARDS_PER_POUND("yd/lb", Form.YARDS_PER_POUND, "1", Fold.NONE),
  METRES_PER_GRAM("m/g", Form.METRES_PER_GRAM, "1", Fold.NONE);

  private static final BigFraction TEX_OF_ONE_METRE_PER_GRAM = BigFraction.of(1000);

  /** 1 lb / 1 yd in tex: 453.59237 g over 0.0009144 km. */
  private static final BigFraction TEX_OF_ONE_YARD_PER_POUND =
      Exact.of(new BigDecimal("453.59237")).divide(Exact.of(new BigDecimal("0.0009144")));

  private enum Form {
    METRES_PER_GRAM,
    YARDS_PER_POUND,
    GRAMS_PER_KILOMETRE
  }

  /** What a fold does to the number. */
  enum Fold {
    DIVIDES,
    IS_IN_THE_NUMBER,
    NONE
  }

  private final String symbol;
  private final Form form;
  private final BigFraction factor;
  private final Fold fold;

  NumberingSystem(String symbol, Form form, String factor, Fold fold) {
    this.symbol = symbol;
    this.form = form;
    this.factor = Arithmetic.number(factor);
    this.fold = fold;
  }

  /** How the system is written beside a number. */
  public String symbol() {
    return symbol;
  }

  Fold fold() {
    return fold;
  }

  /** Whether the symbol stands before the number, as in {@code Nm 28/2} and {@code tex 100}. */
  boolean standsFirst() {
    return this == METRIC || this == TEX;
  }

  static Optional<NumberingSystem> of(String symbol) {
    String wanted = symbol.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    return Arrays.stream(values()).filter(system -> system.symbol.toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
  }

  /** The grist of the thread that a number of this system names. */
  Grist grist(BigFraction number) {
    BigFraction size = number.multiply(factor);
    return new Grist(
        switch (form) {
          case METRES_PER_GRAM -> TEX_OF_ONE_METRE_PER_GRAM.divide(size);
          case YARDS_PER_POUND -> TEX_OF_ONE_YARD_PER_POUND.divide(size);
          case GRAMS_PER_KILOMETRE -> size;
        });
  }

  /** The number, exactly, that a single thread of a grist has in this system. */
  public BigFraction numberOf(Grist grist) {
    BigFraction one = grist(BigFraction.ONE).tex();
    return form == Form.GRAMS_PER_KILOMETRE ? grist.tex().divide(one) : one.divide(grist.tex());
  }
}
