package hankbook.exchange;

import hankbook.reckon.Actuals;
import hankbook.reckon.Bundle;
import hankbook.reckon.ClothAsWoven;
import hankbook.reckon.Leftover;
import hankbook.reckon.WarpAsWound;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Writes what was found after a cloth as the rows of a draft. */
final class ActualsRows {
  private ActualsRows() {}

  static ActualsDraft draft(ActualsFile file) {
    Actuals actuals = file.actuals();
    DraftRow head = said(DraftRow.BLANK, "plan", file.plan());
    head = said(head, "date", actuals.date()).with("reason", actuals.reason()).with("note", actuals.note());
    return new ActualsDraft(Map.of(
        ActualsPart.ACTUALS, List.of(head),
        ActualsPart.LEFTOVERS, actuals.leftovers().stream().map(ActualsRows::leftover).toList(),
        ActualsPart.THRUMS, actuals.thrums().stream().map(ActualsRows::bundle).toList(),
        ActualsPart.SAMPLES, actuals.samples().stream().map(ActualsRows::bundle).toList(),
        ActualsPart.WARP, List.of(warp(actuals.warp())),
        ActualsPart.CLOTH, List.of(cloth(actuals.cloth())),
        ActualsPart.HOURS, List.of(hours(actuals))));
  }

  private static DraftRow leftover(Leftover leftover) {
    DraftRow row = DraftRow.BLANK.with("skein", leftover.skein());
    return switch (leftover.left()) {
      case Leftover.Left.UsedUp _ -> row.with("usedUp", "yes");
      case Leftover.Left.OfLength(var length) -> row.with("left", length.toString());
      case Leftover.Left.Weighed(var weighing) ->
          said(row.with("gross", weighing.gross().toString()).with("tare", weighing.tare().toString()), "regain", weighing.regain());
      case Leftover.Left.Counted(var turns) -> row.with("turns", Integer.toString(turns.count())).with("reel", turns.reel().toString());
    };
  }

  private static DraftRow bundle(Bundle bundle) {
    DraftRow row = bundle.yarn().map(yarn -> DraftRow.BLANK.with("yarn", yarn.yarn()).with("colour", yarn.colour())).orElse(DraftRow.BLANK);
    return switch (bundle.amount()) {
      case Bundle.Amount.OfLength(var length) -> row.with("length", length.toString());
      case Bundle.Amount.OfMass(var mass) -> row.with("mass", mass.toString());
    };
  }

  private static DraftRow warp(WarpAsWound warp) {
    DraftRow row = said(DraftRow.BLANK, "length", warp.length());
    row = said(said(row, "ends", counted(warp.ends())), "broken", counted(warp.broken()));
    row = said(said(row, "loomWaste", warp.loomWaste()), "sampling", warp.sampling());
    return said(row, "widthInReed", warp.widthInReed());
  }

  private static DraftRow cloth(ClothAsWoven cloth) {
    DraftRow row = said(DraftRow.BLANK, "lengthOnLoom", cloth.lengthOnLoom());
    row = said(said(row, "lengthOffLoom", cloth.lengthOffLoom()), "lengthFinished", cloth.lengthFinished());
    row = said(said(row, "widthOnLoom", cloth.widthOnLoom()), "widthOffLoom", cloth.widthOffLoom());
    row = said(said(row, "widthFinished", cloth.widthFinished()), "pieces", counted(cloth.pieces()));
    OptionalLong picks = cloth.picks();
    return said(row, "picks", picks.isPresent() ? Optional.of(picks.getAsLong()) : Optional.empty());
  }

  private static DraftRow hours(Actuals actuals) {
    DraftRow row = DraftRow.BLANK;
    for (var time : actuals.times().entrySet()) {
      row = row.with(time.getKey().key(), WorkTime.print(time.getValue()));
    }
    return row;
  }

  private static Optional<Integer> counted(OptionalInt count) {
    return count.isPresent() ? Optional.of(count.getAsInt()) : Optional.empty();
  }

  private static DraftRow said(DraftRow row, String key, Optional<?> value) {
    return value.map(said -> row.with(key, said.toString())).orElse(row);
  }
}
