package hankbook.desktop;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.measure.Mass;
import hankbook.studio.ToFinish;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows of what was found after a cloth, as they are begun, added and taken out. */
final class FoundRows {
  private FoundRows() {}

  /** The skein that a row of what is left is of. */
  static String code(DraftRow row) {
    return row.text("skein");
  }

  /** With a row for every skein that was drawn, each begun with what is known of what it is wound on, and one for a bundle of each sort. */
  static ActualsDraft begun(ToFinish ground, ActualsDraft draft) {
    List<DraftRow> rows = new ArrayList<>();
    ground.skeins().stream().filter(ToFinish.Taken::isDrawn).forEach(taken -> rows.add(row(draft, taken.drawn().code()).orElseGet(() -> begun(ground, taken))));
    draft.rows(ActualsPart.LEFTOVERS).stream().filter(row -> rows.stream().noneMatch(known -> code(known).equals(code(row)))).forEach(rows::add);
    ActualsDraft all = draft.with(ActualsPart.LEFTOVERS, rows.stream().map(row -> filled(ground, row)).toList());
    for (ActualsPart bundles : List.of(ActualsPart.THRUMS, ActualsPart.SAMPLES)) {
      all = all.rows(bundles).isEmpty() ? all.with(bundles, List.of(DraftRow.BLANK)) : all;
    }
    return all;
  }

  private static Optional<DraftRow> row(ActualsDraft draft, String code) {
    return draft.rows(ActualsPart.LEFTOVERS).stream().filter(row -> code(row).equals(code)).findFirst();
  }

  /** A row of a skein of which nothing is said yet. */
  static DraftRow begun(ToFinish ground, ToFinish.Taken taken) {
    return filled(ground, DraftRow.BLANK.with("skein", taken.drawn().code()));
  }

  /** A skein whose grist is known is most easily weighed. */
  private static DraftRow filled(ToFinish ground, DraftRow row) {
    boolean canBeWeighed = taken(ground, code(row)).filter(taken -> taken.drawn().grist().isPresent()).isPresent();
    return LeftWay.of(row).isPresent() || !canBeWeighed ? row : begun(ground, code(row), LeftWay.WEIGHT);
  }

  /** A row of a skein that is to be said in one way, with what of that stays the same from time to time. */
  static DraftRow begun(ToFinish ground, String code, LeftWay way) {
    DraftRow row = DraftRow.BLANK.with("skein", code);
    Optional<Skein> skein = taken(ground, code).map(taken -> taken.held().skein());
    return switch (way) {
      case USED_UP -> row.with("usedUp", "yes");
      case LENGTH -> row;
      case WEIGHT -> row.with("tare", skein.map(known -> tare(ground, known)).orElse(""));
      case TURNS -> row.with("reel", skein.map(Skein::measures).flatMap(Measures::turns).map(turns -> turns.reel().toString()).orElse(""));
    };
  }

  /** What a skein is wound on: as it was weighed last, else as packages of its form are, nothing for skeins and balls. */
  private static String tare(ToFinish ground, Skein skein) {
    return skein.measures().weighing().map(weighing -> weighing.tare())
        .or(() -> Optional.ofNullable(ground.tares().get(skein.form())))
        .or(() -> LeftReading.isWound(skein) ? Optional.empty() : Optional.of(Mass.ZERO))
        .map(Mass::toString)
        .orElse("");
  }

  /** A skein by its code. */
  static Optional<ToFinish.Taken> taken(ToFinish ground, String code) {
    return ground.skeins().stream().filter(taken -> taken.drawn().code().equals(code)).findFirst();
  }

  /** The skeins that the plan may have touched by mistake, and of which nothing is said. */
  static List<ToFinish.Taken> others(ToFinish ground, ActualsDraft draft) {
    return ground.skeins().stream().filter(taken -> !taken.held().isUsedUp() && row(draft, taken.drawn().code()).isEmpty()).toList();
  }

  /** With one more row. */
  static ActualsDraft with(ActualsDraft draft, ActualsPart part, DraftRow row) {
    List<DraftRow> rows = new ArrayList<>(draft.rows(part));
    rows.add(row);
    return draft.with(part, rows);
  }

  /** With another row in the place of one, counted from 1. */
  static ActualsDraft with(ActualsDraft draft, ActualsPart part, int row, DraftRow changed) {
    List<DraftRow> rows = new ArrayList<>(draft.rows(part));
    rows.set(row - 1, changed);
    return draft.with(part, rows);
  }

  /** Without a row, counted from 1. */
  static ActualsDraft without(ActualsDraft draft, ActualsPart part, int row) {
    List<DraftRow> rows = new ArrayList<>(draft.rows(part));
    rows.remove(row - 1);
    return draft.with(part, rows);
  }
}
