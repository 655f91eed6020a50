package hankbook.desktop;

import hankbook.measure.Unreadable;
import hankbook.plan.Succession;

/** A written order read back, so that the weaver sees what was understood. */
final class OrderReading {
  private static final int LONGEST = 600;

  private OrderReading() {}

  /** The order in words with its sum, {@code 2 times: 6 Chalk, 2 Woad. 16 ends, 12 Chalk and 4 Woad.}; empty where it cannot be read. */
  static String of(String text, String unit) {
    if (text == null || text.isBlank()) {
      return "";
    }
    try {
      Succession order = Succession.parse(text);
      return bounded(order.words()) + ". " + bounded(order.sumInWords(unit)) + ".";
    } catch (Unreadable unreadable) {
      return "";
    }
  }

  /** Words that fit on a screen. */
  static String bounded(String words) {
    return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + "…";
  }
}
