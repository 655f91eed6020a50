package hankbook.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A yarn number as the label gives it, such as {@code Nm 28/2} or {@code 2/16 worsted}.
 *
 * @param system the numbering system
 * @param number the number, over zero
 * @param fold how many singles are folded together, at least 1
 */
public record YarnNumber(NumberingSystem system, BigDecimal number, int fold) {
  private static final String NUMBER = "(\\d{1,7}(?:\\.\\d{1,6})?)";
  private static final Pattern AFTER = Pattern.compile(NUMBER + "(?:/" + NUMBER + ")?\\s*(\\p{L}[\\p{L} ]*|yd/lb|m/g)");
  private static final Pattern BEFORE = Pattern.compile("(\\p{L}+)\\s*" + NUMBER + "(?:/" + NUMBER + ")?");
  private static final String WANTED =
      "a yarn number such as Nm 28/2, 10/2 cotton, 2/16 worsted, 40/2 lea, 20/2 spun silk, 5.5 run, tex 100, 60 den, 1680 yd/lb or 3.4 m/g";

  public YarnNumber {
    if (number.signum() <= 0 || fold < 1) {
      throw new Unreadable(number.toPlainString() + "/" + fold, "a yarn number over zero, folded from at least one");
    }
    if (fold > 1 && system.fold() == NumberingSystem.Fold.NONE) {
      throw new Unreadable(number.toPlainString() + "/" + fold + " " + system.symbol(), Phrase.of("the resulting {0} without a fold", system.symbol()));
    }
  }

  /**
   * Reads a number with its system before or after it and its fold on either side: the fold is the smaller number.
   *
   * @throws Unreadable if it is not a yarn number
   */
  public static YarnNumber parse(String text) {
    String stripped = text.strip();
    Matcher after = AFTER.matcher(stripped.toLowerCase(Locale.ROOT));
    if (after.matches()) {
      return read(text, after.group(3), after.group(1), after.group(2));
    }
    Matcher before = BEFORE.matcher(stripped);
    if (before.matches()) {
      return read(text, before.group(1), before.group(2), before.group(3));
    }
    throw new Unreadable(text, WANTED);
  }

  private static YarnNumber read(String text, String symbol, String first, @Nullable String second) {
    NumberingSystem system = NumberingSystem.of(symbol).orElseThrow(() -> new Unreadable(text, WANTED));
    BigDecimal one = new BigDecimal(first);
    BigDecimal other = second == null ? BigDecimal.ONE : new BigDecimal(second);
    BigDecimal fold = second == null ? BigDecimal.ONE : one.min(other);
    BigDecimal number = second == null ? one : one.max(other);
    if (fold.stripTrailingZeros().scale() > 0 || number.signum() == 0 || fold.signum() == 0) {
      throw new Unreadable(text, WANTED);
    }
    return new YarnNumber(system, number, fold.intValueExact());
  }

  /** The grist of the yarn as it is used, folded: the sum of its singles (ISO 1144; twist contraction neglected). */
  public Grist grist() {
    BigFraction size = Exact.of(number);
    return system.grist(system.fold() == NumberingSystem.Fold.DIVIDES ? size.divide(fold) : size);
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    String size = number.toPlainString() + (fold > 1 ? "/" + fold : "");
    return system.standsFirst() ? system.symbol() + " " + size : size + " " + system.symbol();
  }
}
