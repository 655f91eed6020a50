package hankbook.measure;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long something takes as it is written: {@code 2 min}, {@code 1 h 30 min}, {@code 2.5 s}; to the millisecond. */
public final class DurationText {
  private static final String PART = "(?:(\\d{1,9}(?:\\.\\d{1,9})?)\\s*%s\\s*)?";
  private static final Pattern FORM = Pattern.compile("\\s*" + PART.formatted("h") + PART.formatted("min") + PART.formatted("s"));
  private static final String WANTED = "a time such as 45 s, 2 min or 1 h 30 min";
  private static final int[] MILLISECONDS = {3_600_000, 60_000, 1_000};

  private DurationText() {}

  /**
   * Reads hours, minutes and seconds, each with a decimal point or left out, but not all.
   *
   * @throws Unreadable if it is no time, or one finer than a millisecond
   */
  public static Duration parse(String text) {
    Matcher matcher = FORM.matcher(text);
    if (text.isBlank() || !matcher.matches()) {
      throw new Unreadable(text, WANTED);
    }
    BigDecimal milliseconds = BigDecimal.ZERO;
    for (int i = 0; i < MILLISECONDS.length; i++) {
      BigDecimal each = BigDecimal.valueOf(MILLISECONDS[i]);
      milliseconds = milliseconds.add(Optional.ofNullable(matcher.group(i + 1)).map(BigDecimal::new).orElse(BigDecimal.ZERO).multiply(each));
    }
    try {
      return Duration.ofMillis(milliseconds.longValueExact());
    } catch (ArithmeticException tooFine) {
      throw new Unreadable(text, WANTED);
    }
  }

  /** The form {@link #parse} reads back, without the parts that are zero. */
  public static String print(Duration time) {
    StringBuilder text = new StringBuilder();
    if (time.toHours() > 0) {
      text.append(time.toHours()).append(" h ");
    }
    if (time.toMinutesPart() > 0) {
      text.append(time.toMinutesPart()).append(" min ");
    }
    BigDecimal seconds = BigDecimal.valueOf(time.toSecondsPart() * 1_000L + time.toMillisPart(), 3);
    if (seconds.signum() > 0 || text.isEmpty()) {
      text.append(seconds.signum() == 0 ? "0" : seconds.stripTrailingZeros().toPlainString()).append(" s");
    }
    return text.toString().strip();
  }

  /** As it is read where it was worked out: from an hour on in whole minutes, from a minute on in whole seconds, else in tenths of a second. */
  public static String rounded(Duration time) {
    long step = time.toHours() > 0 ? 60_000 : time.toMinutes() > 0 ? 1_000 : 100;
    return print(Duration.ofMillis((time.toMillis() + step / 2) / step * step));
  }
}
