package hankbook.cost;

import hankbook.measure.Unreadable;
import java.util.Locale;

/** By what a charge is shared over the lines of a purchase. */
public enum Basis {
  /** By what each line costs: usual for duty and discounts. */
  VALUE,
  /** By how heavy the yarn of each line is: fair for carriage that was charged by weight. */
  MASS;

  /**
   * Reads {@code value} or {@code mass}.
   *
   * @throws Unreadable if it is neither
   */
  public static Basis parse(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "value" -> VALUE;
      case "mass" -> MASS;
      default -> throw new Unreadable(text, "value or mass");
    };
  }

  /** As {@link #parse} reads it back. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
