package hankbook.desktop;

import hankbook.studio.ValueBy;

/** What a valuation is grouped by, in words. */
final class ValueByWords {
  private ValueByWords() {}

  static String name(ValueBy by) {
    return switch (by) {
      case YARN -> "Yarn";
      case FIBRE -> "Fibre";
      case PLACE -> "Where in the book";
      case LOCATION -> "Where it lies";
    };
  }

  /** What stands for the group of which the skeins say nothing. */
  static String unsaid(ValueBy by) {
    return by == ValueBy.FIBRE ? "fibre not said" : "not said where";
  }
}
