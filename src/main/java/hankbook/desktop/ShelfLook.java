package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Locale;

/** How the shelf is looked at. */
enum ShelfLook {
  GROUPS,
  SKEINS,
  WALL;

  String words() {
    return switch (this) {
      case GROUPS -> Say.text("Yarns");
      case SKEINS -> Say.text("Skeins");
      case WALL -> Say.text("Wall");
    };
  }

  String about() {
    return switch (this) {
      case GROUPS -> Say.text("Skeins by yarn and colour");
      case SKEINS -> Say.text("Every skein by itself");
      case WALL -> Say.text("Swatches as large as there is of each");
    };
  }

  /** Its name in ids. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
