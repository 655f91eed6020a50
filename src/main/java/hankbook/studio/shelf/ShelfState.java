package hankbook.studio.shelf;

import hankbook.studio.ShelfSkein;

/** What can be said of a skein in a word, whatever is written on it. */
public enum ShelfState {
  OPENED,
  UNOPENED,
  /** Something of it is promised to nothing. */
  FREE,
  RESERVED,
  LOOM;

  boolean holdsOf(ShelfSkein skein) {
    return switch (this) {
      case OPENED -> skein.skein().opened();
      case UNOPENED -> !skein.skein().opened();
      case FREE -> skein.free().isPositive();
      case RESERVED -> skein.allReserved().isPositive();
      case LOOM -> skein.allOnLoom().isPositive();
    };
  }
}
