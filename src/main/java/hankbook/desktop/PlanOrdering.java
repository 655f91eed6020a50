package hankbook.desktop;

import hankbook.desktop.say.Say;

/** In what order plans are listed. */
enum PlanOrdering {
  BY_NAME,
  BY_VERDICT,
  BY_DATE;

  String words() {
    return switch (this) {
      case BY_NAME -> Say.text("By name");
      case BY_VERDICT -> Say.text("What is short first");
      case BY_DATE -> Say.text("Last changed first");
    };
  }
}
