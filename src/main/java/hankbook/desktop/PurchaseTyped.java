package hankbook.desktop;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A purchase as it is typed, whatever of it can be read.
 *
 * @param head what is typed in the fields for all of it, by their names
 * @param lines what is typed in its lines
 */
record PurchaseTyped(Map<String, String> head, List<Line> lines) {
  /** The fields for all of a purchase. */
  static final List<String> HEAD =
      List.of("date", "from", "currency", "rate", "rateDate", "carriage", "carriageBy", "duty", "dutyBy", "discount", "discountBy");

  /**
   * One line as it is typed.
   *
   * @param words what was bought
   * @param price what was paid for it
   * @param skeins the codes of those it paid for
   */
  record Line(String words, String price, List<String> skeins) {
    static final Line BLANK = new Line("", "", List.of());

    Line {
      words = words.strip();
      price = price.strip();
      skeins = List.copyOf(skeins);
    }
  }

  PurchaseTyped {
    head = stripped(head);
    lines = List.copyOf(lines);
  }

  private static Map<String, String> stripped(Map<String, String> head) {
    Map<String, String> stripped = new HashMap<>();
    HEAD.forEach(key -> stripped.put(key, head.getOrDefault(key, "").strip()));
    return Map.copyOf(stripped);
  }

  /** What is typed in a field, or empty. */
  String text(String key) {
    return head.getOrDefault(key, "");
  }

  /** A charge and by what it is shared are named after it. */
  static String by(String charge) {
    return charge + "By";
  }
}
