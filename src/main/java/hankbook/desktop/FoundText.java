package hankbook.desktop;

import hankbook.exchange.ActualsPart;
import hankbook.exchange.WorkTime;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Set;

/** Whether a text can stand in a field of what was found after a cloth. */
final class FoundText {
  private static final Set<String> WORDS = Set.of("date", "plan", "reason", "note", "skein", "yarn", "colour", "usedUp");
  private static final String WANTED_DAY = "a day such as 2026-03-14";
  private static final String WANTED_AMOUNT = "a weight such as 38 g, or a length such as 12 m";

  private FoundText() {}

  /** What is wrong with a text, or empty. */
  static String fault(ActualsPart part, String key, String text) {
    try {
      if (!text.isBlank()) {
        read(part, key, text);
      }
      return "";
    } catch (Unreadable unreadable) {
      return Wording.wanted(unreadable);
    }
  }

  private static void read(ActualsPart part, String key, String text) {
    if (part == ActualsPart.HOURS) {
      WorkTime.parse(text);
      return;
    }
    switch (key) {
      case "date" -> day(text);
      case "gross", "tare" -> Mass.parse(text);
      case "regain" -> Percentage.parse(text);
      case "turns", "ends", "broken", "picks", "pieces" -> Arithmetic.count(text);
      case "amount" -> amount(text);
      case "plan", "reason", "note", "skein", "yarn", "colour", "usedUp" -> {}
      default -> Length.parse(text);
    }
  }

  /** Whether a field is for a quantity, rather than for words or a day. */
  static boolean isQuantity(ActualsPart part, String key) {
    return part == ActualsPart.HOURS || !WORDS.contains(key);
  }

  private static void day(String text) {
    try {
      LocalDate.parse(text.strip());
    } catch (DateTimeParseException noDay) {
      throw new Unreadable(text, WANTED_DAY);
    }
  }

  private static void amount(String text) {
    if (!isMass(text)) {
      try {
        Length.parse(text);
      } catch (Unreadable neither) {
        throw new Unreadable(text, WANTED_AMOUNT);
      }
    }
  }

  /** Whether an amount of yarn is a weight; else it is to be read as a length. */
  static boolean isMass(String text) {
    try {
      Mass.parse(text);
      return true;
    } catch (Unreadable noMass) {
      return false;
    }
  }
}
