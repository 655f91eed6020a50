package hankbook.desktop;

import javafx.scene.Node;

/** Which page of the guide speaks of what the window shows, by its file. */
final class GuideWay {
  private GuideWay() {}

  /** The page that speaks of a screen. */
  static String of(Screen screen) {
    return switch (screen.chord()) {
      case SHELF -> "find.md";
      case PLANS -> "plan.md";
      case JOURNAL -> "journal.md";
      case AHEAD -> "ahead.md";
      case AFTER -> "after.md";
      case COSTS -> "costs.md";
      case LOOMS -> "settings.md";
      case SETTINGS -> "yours.md";
      default -> "README.md";
    };
  }

  /** The page that speaks of what stands in the place of a screen: the ways to begin, or the keys. */
  static String insteadOfScreen(Node shown) {
    return shown instanceof KeysPage ? "yours.md" : "first-ten-minutes.md";
  }
}
