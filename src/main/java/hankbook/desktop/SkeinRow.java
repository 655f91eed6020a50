package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.util.Collection;
import java.util.Comparator;

/** A skein as the shelf shows it; every text is made once. */
record SkeinRow(
    ShelfSkein shelf, Amount held, Amount free, Amount reserved, Amount onLoom, KnownBy known, String searched) {
  /** By yarn and colour, then by code. */
  static final Comparator<SkeinRow> ORDER = Comparator.comparing((SkeinRow row) -> row.skein().yarn()).thenComparing(SkeinRow::code);

  static SkeinRow of(ShelfSkein shelf) {
    Skein skein = shelf.skein();
    Length reserved = sum(shelf.reserved().values());
    Length onLoom = sum(shelf.onLoom().values());
    KnownBy known = KnownBy.of(skein.measurement());
    String plans = String.join(" ", shelf.reserved().keySet()) + " " + String.join(" ", shelf.onLoom().keySet());
    String searched = PlainWords.of(
        skein.code(), skein.yarn().yarn(), skein.yarn().colour(), skein.lot(), skein.form().toString(), skein.location(), skein.fibre(),
        known.toString(), plans);
    return new SkeinRow(
        shelf, Amount.of(shelf.free().plus(reserved).plus(onLoom)), Amount.of(shelf.free()), Amount.of(reserved), Amount.of(onLoom), known, searched);
  }

  Skein skein() {
    return shelf.skein();
  }

  String code() {
    return skein().code();
  }

  private static Length sum(Collection<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }
}
