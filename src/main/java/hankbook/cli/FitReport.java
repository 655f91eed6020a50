package hankbook.cli;

import hankbook.allot.Change;
import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.allot.Remedy;
import hankbook.allot.StandIn;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Piece;
import hankbook.plan.PlanVariants;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What fits, and what would make a short plan fit, as a page to read. */
final class FitReport {
  private final PlanCheck check;
  private final Fit fit;
  private final List<String> lines = new ArrayList<>();

  private FitReport(PlanCheck check, Fit fit) {
    this.check = check;
    this.fit = fit;
  }

  static String of(PlanCheck check, Fit fit) {
    FitReport report = new FitReport(check, fit);
    report.lines.add(check.plan().name());
    report.lines.add("");
    report.most();
    report.remedies();
    report.standIns();
    return String.join(System.lineSeparator(), report.lines);
  }

  private void most() {
    int ends = check.yardage().width().ends();
    Length warp = check.yardage().warp().total();
    if (fit.longestWarp().isPositive()) {
      lines.add("Longest warp for its " + ends + " ends: " + metres(fit.longestWarp()) + against(warp, fit.longestWarp()));
    } else {
      lines.add("Longest warp for its " + ends + " ends: none is short enough" + fit.warpAlone().map(FitReport::alone).orElse("."));
    }
    fit.mostWidth().ifPresentOrElse(
        most -> lines.add("Most ends of its " + metres(warp) + ": " + most.ends() + ", planned " + ends + "; " + centimetres(most.inReed()) + " in the reed, "
            + centimetres(most.finished(check.plan().allowances())) + " finished"),
        () -> lines.add("Most ends of its " + metres(warp) + ": none are few enough."));
    fit.closestSett().ifPresentOrElse(
        sett -> lines.add("Closest sett to the same width: " + sett + ", planned " + check.plan().warp().sett()),
        () -> lines.add("Closest sett to the same width: " + (check.plan().warp().succession().isPresent() ? "the written order makes its own ends." : "none is open enough.")));
    fit.mostPieces().ifPresent(most -> lines.add("Most pieces: " + most + ", planned " + check.plan().pieces().stream().mapToInt(Piece::count).sum()));
    fit.longestPiece().ifPresent(most -> lines.add(
        (check.plan().pieces().size() > 1 ? "Longest piece, the others in proportion: " : "Longest piece: ") + centimetres(most) + ", planned " + centimetres(PlanVariants.longestPiece(check.plan()))));
    if (!fit.proven()) {
      lines.add("There are too many ways to choose to try them all: more may fit than is said here.");
    }
    lines.add("At the most nothing is left over: take less where the metres are not sure.");
  }

  private static String alone(Length alone) {
    return ": the weft is short by itself. The yarn of the warp alone would reach " + metres(alone) + ".";
  }

  private static String against(Length planned, Length most) {
    Length more = most.minus(planned);
    if (more.isZero()) {
      return ", as planned";
    }
    return more.isPositive() ? ", " + metres(more) + " more than planned" : ", " + metres(more.negated()) + " less than planned";
  }

  private void remedies() {
    if (!check.isShort()) {
      return;
    }
    lines.add("");
    lines.add("What would make it fit, the least change first:");
    for (Remedy remedy : fit.remedies()) {
      boolean bought = remedy.change() instanceof Change.Buying;
      lines.add("  " + remedy.words() + (bought ? "" : " (" + percent(remedy.change().givenUp()) + ")"));
    }
    if (fit.remedies().isEmpty()) {
      lines.add("  nothing that the shelf shows.");
    }
    fit.buy().stream().filter(purchase -> purchase.putUps().isEmpty()).map(Purchase::yarn)
        .forEach(yarn -> lines.add("  Buy more of " + yarn + ": the shelf shows no put-up to judge by."));
  }

  private void standIns() {
    if (!fit.standIns().isEmpty()) {
      lines.add("");
      lines.add("On the shelf, of like grist and fibre:");
      fit.standIns().forEach(standIn -> lines.add("  " + row(standIn)));
    }
  }

  private static String row(StandIn standIn) {
    String colour = standIn.difference().map(difference -> "colour difference " + difference).orElse("colour difference unknown");
    return standIn.yarn() + " for " + standIn.place() + ": " + metres(standIn.free()) + " free, " + colour + (standIn.covers() ? ", covers it" : ", not enough of it");
  }

  private static String percent(BigFraction part) {
    return Exact.plain(part.multiply(100), 1) + " %";
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }

  private static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }
}
