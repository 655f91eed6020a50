package hankbook.exchange;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Numbers as a weaving file writes them. */
final class WeavingNumber {
  private static final Pattern WHOLE = Pattern.compile("\\+?\\d{1,9}");
  private static final Pattern DECIMAL = Pattern.compile("\\d{1,9}(?:[.,]\\d{0,30})?|[.,]\\d{1,30}");

  private WeavingNumber() {}

  /**
   * A whole number within bounds.
   *
   * @param wanted what it is, for a refusal
   * @throws Unreadable if it is none
   */
  static int whole(String text, int least, int most, String wanted) {
    if (WHOLE.matcher(text).matches()) {
      int number = Integer.parseInt(text);
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw new Unreadable(text, Phrase.of("{0} from {1} to {2}", wanted, least, most));
  }

  /** Whole numbers with commas between them; none where nothing is written. */
  static List<Integer> list(String text, int least, int most, String wanted) {
    List<Integer> numbers = new ArrayList<>();
    if (!text.isEmpty()) {
      for (String part : text.split(",", -1)) {
        numbers.add(whole(part.strip(), least, most, wanted));
      }
    }
    return numbers;
  }

  /** A number of at least zero; a comma can only be its decimal mark. */
  static BigDecimal decimal(String text) {
    if (!DECIMAL.matcher(text).matches()) {
      throw new Unreadable(text, "a number such as 0.25");
    }
    return new BigDecimal(text.replace(',', '.'));
  }

  /** The open specification lets a yes be said in four ways, and a no. */
  static boolean yes(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "true", "on", "yes", "1" -> true;
      case "false", "off", "no", "0" -> false;
      default -> throw new Unreadable(text, "true or false");
    };
  }
}
