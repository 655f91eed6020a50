package hankbook.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A decimal number (with a point, never a comma) and the word after it. */
record NumberAndUnit(BigDecimal number, String unit) {
  private static final Pattern FORM = Pattern.compile("\\s*([+-]?(?:\\d{1,15}(?:\\.\\d{1,12})?|\\.\\d{1,12}))\\s*(\\p{L}*)\\s*");

  static Optional<NumberAndUnit> split(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Optional.of(new NumberAndUnit(new BigDecimal(matcher.group(1)), matcher.group(2)))
        : Optional.empty();
  }
}
