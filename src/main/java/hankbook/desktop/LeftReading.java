package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.exchange.DraftRow;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.reckon.Leftover;
import hankbook.reckon.SkeinUse;
import hankbook.studio.ToFinish;
import hankbook.yarn.Measures;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a row says is left of a skein.
 *
 * @param left all that is still wound on it; empty as long as that is not known
 * @param words what it comes to, or what is still wanted
 */
record LeftReading(Optional<Length> left, String words) {
  static LeftReading of(ToFinish.Taken taken, DraftRow row) {
    Optional<Leftover.Left> said = said(row);
    if (said.isEmpty()) {
      return new LeftReading(Optional.empty(), LeftWay.of(row).map(way -> wanted(way, row, taken.held().skein())).orElse(""));
    }
    Skein skein = taken.held().skein();
    try {
      Optional<Length> found = switch (said.get()) {
        case Leftover.Left.UsedUp _ -> Optional.of(Length.ZERO);
        case Leftover.Left.OfLength(var length) -> Optional.of(length);
        case Leftover.Left.Weighed(var weighing) -> length(skein, new Measures(Optional.empty(), Optional.empty(), Optional.of(weighing)));
        case Leftover.Left.Counted(var turns) -> length(skein, new Measures(Optional.empty(), Optional.of(turns), Optional.empty()));
      };
      return found.map(length -> new LeftReading(found, words(SkeinUse.of(taken.drawn(), length), length))).orElseGet(
          () -> new LeftReading(found, Say.text("No grist of it is known: weigh a sample of the yarn first, or give its length.")));
    } catch (Unreadable moisture) {
      return new LeftReading(Optional.empty(), Wording.wanted(moisture));
    }
  }

  /** What a row says; empty where nothing is said yet, or it cannot be read. */
  static Optional<Leftover.Left> said(DraftRow row) {
    try {
      String json = new ActualsDraft(Map.of(ActualsPart.LEFTOVERS, List.of(row))).json();
      return Optional.of(ActualsFile.read("", json).actuals().leftovers().getFirst().left());
    } catch (BadInput unfinished) {
      return Optional.empty();
    }
  }

  private static Optional<Length> length(Skein skein, Measures measures) {
    return measures.measurement(skein.grist(), skein.sample(), skein.fibre()).length();
  }

  private static String wanted(LeftWay way, DraftRow row, Skein skein) {
    return switch (way) {
      case USED_UP -> "";
      case LENGTH -> Say.text("Give the length that is left.");
      case WEIGHT -> row.text("gross").isBlank() ? weigh(skein) : Say.text("Give its tare, 0 g where it is wound on nothing.");
      case TURNS -> row.text("turns").isBlank() ? Say.text("Count its turns on a reel.") : Say.text("Give the length of one turn.");
    };
  }

  private static String weigh(Skein skein) {
    return switch (skein.form()) {
      case CONE -> Say.text("Weigh it with its cone.");
      case SPOOL -> Say.text("Weigh it with its spool.");
      default -> Say.text("Weigh it.");
    };
  }

  /** Whether it is put up on something that weighs. */
  static boolean isWound(Skein skein) {
    return skein.form() == PackageForm.CONE || skein.form() == PackageForm.SPOOL;
  }

  private static String words(SkeinUse use, Length left) {
    String said = Say.text("{0} left, {1} used", Wording.metres(left), Wording.metres(use.used()));
    String more = use.drawnMore().isPositive() ? "; " + Say.text("{0} more than was drawn", Wording.metres(use.drawnMore())) : "";
    String found = use.recounted().isPositive() ? "; " + Say.text("{0} more than the book knew", Wording.metres(use.recounted())) : "";
    return said + more + found + ".";
  }
}
