package hankbook.exchange;

import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Time spent on work as a weaver writes it: {@code 1:30}, {@code 1.5 h}, {@code 90 min} or {@code 1 h 30 min}; up to 100 000 hours. */
public final class WorkTime {
  private static final String WANTED = "a time such as 1:30, 1.5 h or 90 min";
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,5}):([0-5]\\d)");
  private static final Pattern SPELT = Pattern.compile("(?:(\\d{1,5}(?:\\.\\d{1,6})?)\\s*h)?\\s*(?:(\\d{1,7}(?:\\.\\d{1,6})?)\\s*min)?");

  private WorkTime() {}

  /**
   * Reads a time, to the second.
   *
   * @throws Unreadable if it is none
   */
  public static Duration parse(String text) {
    String stripped = text.strip();
    Matcher clock = CLOCK.matcher(stripped);
    if (clock.matches()) {
      return Duration.ofHours(Long.parseLong(clock.group(1))).plusMinutes(Long.parseLong(clock.group(2)));
    }
    Matcher spelt = SPELT.matcher(stripped);
    if (stripped.isEmpty() || !spelt.matches()) {
      throw new Unreadable(text, WANTED);
    }
    return seconds(spelt.group(1), 3600).plus(seconds(spelt.group(2), 60));
  }

  private static Duration seconds(@Nullable String number, int each) {
    BigDecimal count = number == null ? BigDecimal.ZERO : new BigDecimal(number);
    return Duration.ofSeconds(count.multiply(BigDecimal.valueOf(each)).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /** The form {@link #parse} reads back: {@code 1:30}, and with decimals of a minute where there are seconds. */
  public static String print(Duration time) {
    if (time.toSecondsPart() == 0) {
      return "%d:%02d".formatted(time.toHours(), time.toMinutesPart());
    }
    BigDecimal minutes = BigDecimal.valueOf(time.toSeconds()).divide(BigDecimal.valueOf(60), 6, RoundingMode.HALF_UP).stripTrailingZeros();
    return minutes.toPlainString() + " min";
  }
}
