package hankbook.desktop;

import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.util.Comparator;

/** A skein as the shelf shows it; every text is made once. */
record SkeinRow(
    ShelfSkein shelf, Amount held, Amount free, Amount reserved, Amount onLoom, KnownBy known) {
  /** By yarn and colour, then by code. */
  static final Comparator<SkeinRow> ORDER = Comparator.comparing((SkeinRow row) -> row.skein().yarn()).thenComparing(SkeinRow::code);

  static SkeinRow of(ShelfSkein shelf) {
    Skein skein = shelf.skein();
    KnownBy known = KnownBy.of(skein.measurement());
    return new SkeinRow(
        shelf, Amount.of(skein.holds()), Amount.of(shelf.free()), Amount.of(shelf.allReserved()), Amount.of(shelf.allOnLoom()), known);
  }

  Skein skein() {
    return shelf.skein();
  }

  String code() {
    return skein().code();
  }
}
