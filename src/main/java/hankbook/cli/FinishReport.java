package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.reckon.SkeinUse;
import hankbook.reckon.YarnUsed;
import hankbook.studio.Finish;
import hankbook.studio.Finishing;
import hankbook.studio.UsedAgainstPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the book of a plan is squared, as a page to read. */
final class FinishReport {
  private FinishReport() {}

  static String preview(Finishing finishing) {
    List<String> lines = new ArrayList<>(List.of(finishing.plan() + ", cut off on " + finishing.date() + ". Nothing is posted yet; this would be:", ""));
    lines.addAll(squared(finishing));
    if (finishing.wantingReason().isEmpty()) {
      return page(lines);
    }
    if (finishing.made().actuals().reason().isBlank()) {
      lines.add("A reason is asked for: give it with --reason, or in the file.");
    } else {
      lines.add("Accepted as it is: " + finishing.made().actuals().reason());
    }
    return page(lines);
  }

  static String finished(Finish.Finished finished) {
    List<String> lines = new ArrayList<>();
    Optional<Finishing> finishing = finished.finishing();
    boolean asBefore = finishing.isPresent() && finished.entered().isEmpty();
    lines.add(asBefore ? "The same yarn as before, so nothing was posted; what else was found is kept." : LedgerReport.entered(finished.entered()));
    finishing.ifPresent(done -> {
      lines.add("");
      lines.addAll(squared(done));
      lines.add(done.plan() + " is finished: its loom is empty, and nothing is reserved for it.");
    });
    return page(lines);
  }

  private static List<String> squared(Finishing finishing) {
    TextTable skeins = new TextTable("skein", "yarn", ">drawn", ">taken more", ">back", ">used", ">samples", ">thrums", ">woven");
    finishing.squared().skeins().forEach(use -> skeins.row(
        use.skein().code(), use.skein().yarn().toString(), metres(use.skein().onLoom()), metresOrNothing(use.drawnMore()), metresOrNothing(use.returned()),
        metres(use.used()), metresOrNothing(use.sampled()), metresOrNothing(use.thrums()), metres(use.woven())));
    List<String> lines = new ArrayList<>(skeins.lines());
    finishing.squared().skeins().forEach(use -> lines.addAll(noted(use)));
    lines.add("");
    lines.addAll(yarns(finishing));
    lines.add("");
    return lines;
  }

  private static List<String> noted(SkeinUse use) {
    List<String> notes = new ArrayList<>();
    if (use.skein().reserved().isPositive()) {
      notes.add(metres(use.skein().reserved()) + " of " + use.skein().code() + " were still reserved and are released.");
    }
    if (use.recounted().isPositive()) {
      notes.add(use.skein().code() + " has " + metres(use.recounted()) + " more left than the book knew of; it is recounted.");
    }
    return notes;
  }

  private static List<String> yarns(Finishing finishing) {
    TextTable table = new TextTable("yarn", ">planned", ">used", ">±", ">unexplained", ">may stay", "");
    for (int i = 0; i < finishing.yarns().size(); i++) {
      UsedAgainstPlan yarn = finishing.yarns().get(i);
      YarnUsed used = finishing.made().used().get(i);
      table.row(
          yarn.yarn().toString(), metres(yarn.planned()), metres(yarn.used()), metres(used.uncertainty()), metres(yarn.unexplained()), metres(yarn.mayStay()),
          yarn.wantsReason() ? "wants a reason" : "");
    }
    return table.lines();
  }

  private static String metresOrNothing(Length length) {
    return length.isZero() ? "" : metres(length);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines).stripTrailing();
  }
}
