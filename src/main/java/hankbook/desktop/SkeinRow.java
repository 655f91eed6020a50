package hankbook.desktop;

import hankbook.studio.ShelfSkein;
import hankbook.studio.shelf.SoughtSkein;
import hankbook.yarn.Doubts;
import hankbook.yarn.Skein;
import java.util.Comparator;

/**
 * A skein as the shelf shows it; every text is made once.
 *
 * @param sought made ready to be looked for
 * @param uncertainty of what there is of it
 * @param doubts by which that is judged
 */
record SkeinRow(
    SoughtSkein sought, Amount held, Amount free, Amount reserved, Amount onLoom, KnownBy known, Amount uncertainty, Doubts doubts) {
  /** By yarn and colour, then by code. */
  static final Comparator<SkeinRow> ORDER = Comparator.comparing((SkeinRow row) -> row.skein().yarn()).thenComparing(SkeinRow::code);

  static SkeinRow of(ShelfSkein shelf, Doubts doubts) {
    Skein skein = shelf.skein();
    KnownBy known = KnownBy.of(skein.measurement());
    return new SkeinRow(
        SoughtSkein.of(shelf), Amount.of(skein.holds()), Amount.of(shelf.free()), Amount.of(shelf.allReserved()), Amount.of(shelf.allOnLoom()), known,
        Amount.of(shelf.uncertainty(doubts)), doubts);
  }

  /** The skein and where its yarn is. */
  ShelfSkein shelf() {
    return sought.shelf();
  }

  Skein skein() {
    return shelf().skein();
  }

  /** How surely its metres are known, such as {@code ± 15.6 m}; empty where there are none. */
  String sureness() {
    return uncertainty.length().isZero() ? "" : Wording.within(uncertainty.length());
  }

  String code() {
    return skein().code();
  }
}
