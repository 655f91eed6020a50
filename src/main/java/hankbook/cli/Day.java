package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;

/** A day as it is given to a command. */
final class Day {
  private static final Pattern FOUR_DIGIT_YEAR = Pattern.compile("(?!0000)\\d{4}-\\d{2}-\\d{2}");

  private Day() {}

  /**
   * Reads a day that an option gives.
   *
   * @throws BadInput if it is none
   */
  static LocalDate of(String option, String text) throws BadInput {
    return Typed.read(option, text, Day::read);
  }

  private static LocalDate read(String text) {
    String stripped = text.strip();
    try {
      if (FOUR_DIGIT_YEAR.matcher(stripped).matches()) {
        return LocalDate.parse(stripped);
      }
    } catch (DateTimeParseException noSuchDay) {
      // Said below, as for any other text that is no day.
    }
    throw new Unreadable(text, "a day such as 2026-12-20");
  }
}
