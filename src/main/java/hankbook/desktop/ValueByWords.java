package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.ValueBy;

/** What a valuation is grouped by, in words. */
final class ValueByWords {
  private ValueByWords() {}

  static String name(ValueBy by) {
    return switch (by) {
      case YARN -> Say.text("Yarn");
      case FIBRE -> Say.text("Fibre");
      case PLACE -> Say.text("Where in the book");
      case LOCATION -> Say.text("Where it lies");
    };
  }

  /** What stands for the group of which the skeins say nothing. */
  static String unsaid(ValueBy by) {
    return by == ValueBy.FIBRE ? Say.text("fibre not said") : Say.text("not said where");
  }
}
