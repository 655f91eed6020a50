package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.desktop.say.Say;
import hankbook.desktop.say.Language;
import hankbook.exchange.BadInput;
import hankbook.exchange.Fault;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Length;
import hankbook.plan.WarpPart;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What is said of plans and their fields. */
final class PlanWords {
  private PlanWords() {}

  /** What a field is called on the screen. */
  static String caption(PlanPart part, String key) {
    return switch (key) {
      case "name" -> Say.text("Name");
      case "count" -> Say.text("Count");
      case "length" -> part == PlanPart.PIECES ? Say.text("Length") : part == PlanPart.WARP ? Say.text("Warp length") : Say.text("Woven length");
      case "width" -> part == PlanPart.WEFT ? Say.text("Part of reed") : Say.text("Width");
      case "hems" -> Say.text("Hems");
      case "fringe" -> Say.text("Fringe");
      case "sett" -> Say.text("Sett");
      case "ends" -> part == PlanPart.WARP ? Say.text("All ends") : Say.text("Ends");
      case "endsMultiple" -> Say.text("Ends in units of");
      case "selvedgeEnds" -> Say.text("Selvedge ends");
      case "endsPerUnit" -> Say.text("Ends per unit");
      case "repeats" -> Say.text("Repeats");
      case "units" -> Say.text("Units");
      case "yarn" -> part == PlanPart.SELVEDGE ? Say.text("Selvedge yarn") : Say.text("Yarn");
      case "colour" -> part == PlanPart.SELVEDGE ? Say.text("Selvedge colour") : Say.text("Colour");
      case "share" -> Say.text("Share");
      case "strands" -> Say.text("Strands");
      case "picks" -> Say.text("Picks");
      case "warpTakeUp" -> Say.text("Warp take-up");
      case "weftTakeUp" -> Say.text("Weft take-up");
      case "drawIn" -> Say.text("Draw-in");
      case "lengthShrinkage" -> Say.text("Shrinkage, length");
      case "widthShrinkage" -> Say.text("Shrinkage, width");
      case "sampling" -> Say.text("Sampling");
      case "loomWaste" -> Say.text("Loom waste");
      case "gap" -> Say.text("Gap between");
      case "winding" -> Say.text("Winding loss");
      case "repairEnds" -> Say.text("Repair ends");
      case "roundUpTo" -> Say.text("Round warp up to");
      case "threads" -> Say.text("Threads together");
      case "mark" -> Say.text("Mark");
      case "oneLot" -> Say.text("One dye lot");
      case "succession" -> Say.text("Order, from left to right");
      case "weftSuccession" -> Say.text("Order of picks, from the first");
      case "extendLeft" -> Say.text("Units more, left");
      case "extendRight" -> Say.text("Units more, right");
      case "loom" -> Say.text("Loom");
      case "reed" -> Say.text("Reed");
      case "weave" -> Say.text("Weave");
      case "sley" -> Say.text("Ends in a dent");
      default -> throw new IllegalArgumentException("key is \"" + key + "\", wanted one of a plan's");
    };
  }

  /** What might be typed into a field; where the field may stay empty, what that means. */
  static String example(PlanPart part, String key) {
    return switch (key) {
      case "name" -> Say.text("towel");
      case "length" -> part == PlanPart.PIECES ? "70 cm" : Say.text("from pieces");
      case "width" -> part == PlanPart.WEFT ? "1" : "48 cm";
      case "ends" -> part == PlanPart.WARP ? Say.text("from width") : "120";
      case "sett", "picks" -> "10/cm";
      case "count", "endsMultiple", "repeats", "units", "strands", "threads" -> "1";
      case "share" -> part == PlanPart.ORDER ? "0.5" : "1";
      case "endsPerUnit" -> "4";
      case "selvedgeEnds", "repairEnds", "extendLeft", "extendRight" -> "0";
      case "mark" -> Say.text("the colour");
      case "oneLot" -> "no";
      case "loom" -> Say.text("any");
      case "reed" -> "5/cm";
      case "weave" -> "plain";
      case "sley" -> "2";
      case "succession", "weftSuccession" -> "12 x (6 Chalk, 2 Woad), 6 Chalk";
      case "hems", "fringe", "sampling", "loomWaste", "gap" -> "0 cm";
      case "roundUpTo" -> "1 cm";
      case "warpTakeUp", "weftTakeUp", "drawIn", "lengthShrinkage", "widthShrinkage", "winding" -> "0 %";
      default -> "";
    };
  }

  /** What a group of fields, or a row of it, is called. */
  static String group(PlanPart part) {
    return switch (part) {
      case PLAN -> Say.text("Plan");
      case PIECES -> Say.text("Piece");
      case WARP -> Say.text("Warp");
      case SELVEDGE -> Say.text("Selvedge");
      case SECTIONS -> Say.text("Section");
      case ORDER -> Say.text("Order of ends");
      case WEFT -> Say.text("Weft");
      case ALLOWANCES -> Say.text("Allowances");
      case WINDING -> Say.text("Winding");
    };
  }

  /** Where a field stands: {@code Piece 1, length}. */
  static String place(PlanField field) {
    String row = field.part().isList() ? group(field.part()) + " " + field.row() : group(field.part());
    String key = field.key().isEmpty() ? "" : caption(field.part(), field.key());
    if (key.isEmpty()) {
      return row;
    }
    return field.part() == PlanPart.PLAN || key.startsWith(row) ? key : row + ", " + inside(key);
  }

  /** A caption within a sentence; nouns of languages that write them large stay so. */
  static String inside(String caption) {
    return Say.language() == Language.GERMAN ? caption : caption.substring(0, 1).toLowerCase(Locale.ROOT) + caption.substring(1);
  }

  /**
   * Why a plan cannot be reckoned.
   *
   * @param plan its name, which the refusal may begin with
   */
  static String why(BadInput refused, String plan) {
    return refused.field().map(PlanWords::why).orElseGet(() -> sentence(String.join("; ", refused.faults()), plan + ": "));
  }

  private static String why(Fault fault) {
    String where = PlanField.parse(fault.field()).map(PlanWords::place).orElse(fault.field());
    String wanted = Say.known(fault.wanted());
    return fault.found().isBlank() ? Say.text("{0} is still wanted: {1}.", where, wanted) : Say.text("{0} reads '{1}', wanted {2}.", where, fault.found(), wanted);
  }

  /** Beside the field itself. */
  static String beside(Fault fault) {
    return fault.found().isBlank() ? Say.text("Still wanted: {0}.", Say.known(fault.wanted())) : Wording.wanted(fault.found(), fault.wanted());
  }

  private static String sentence(String message, String beginning) {
    String told = message.startsWith(beginning) ? message.substring(beginning.length()) : message;
    return Character.toUpperCase(told.charAt(0)) + told.substring(1) + (told.endsWith(".") ? "" : ".");
  }

  /** Why something was not done. */
  static String trouble(Exception trouble) {
    if (trouble instanceof BadInput unreadable) {
      return why(unreadable, "");
    }
    String told = Objects.requireNonNullElse(trouble.getMessage(), trouble.getClass().getSimpleName());
    return Status.isOwnFault(trouble) ? Say.text("That did not work, and the fault is Hankbook's own: {0}. The journal shows whether yarn was moved.", told) : Status.words(trouble);
  }

  /** A length along the warp, to a hundredth of a metre or yard. */
  static String fine(Length length) {
    return Wording.warp(length);
  }

  static String part(WarpPart part) {
    return switch (part) {
      case CLOTH -> Say.text("cloth");
      case HEMS -> Say.text("hems");
      case SHRINKAGE -> Say.text("shrinkage");
      case TAKE_UP -> Say.text("take-up");
      case FRINGE -> Say.text("fringe");
      case GAPS -> Say.text("gaps");
      case SAMPLING -> Say.text("sampling");
      case LOOM_WASTE -> Say.text("loom waste");
      case ROUNDING -> Say.text("rounding");
    };
  }

  /** The verdict on a plan in a sentence. */
  static String verdict(Standing standing, PlanCheck check) {
    return switch (standing) {
      case SHORT -> shortOf(check);
      case TIGHT -> Say.text("There is enough, but it might run short.");
      default -> Say.text("The shelf covers this plan.");
    };
  }

  /** Which yarns are short: {@code Gorse Gold is short.} */
  static String shortOf(PlanCheck check) {
    List<String> yarns = check.covers().stream().filter(cover -> cover.verdict() == Verdict.SHORT).map(cover -> cover.yarn().toString()).toList();
    String last = yarns.get(yarns.size() - 1);
    return yarns.size() == 1 ? Say.text("{0} is short.", last) : Say.text("{0} and {1} are short.", String.join(", ", yarns.subList(0, yarns.size() - 1)), last);
  }

  /** How likely a yarn is to run out, in a sentence. */
  static String risk(Cover cover) {
    if (cover.margin().isNegative()) {
      return Say.text("Short by {0}.", Wording.yarn(cover.margin().negated()));
    }
    if (cover.verdict() == Verdict.SHORT) {
      return Say.text("The metres suffice, whole ends do not.");
    }
    return Say.text("The risk of running short is {0}.", Wording.phrase(cover.chance().phrase()));
  }
}
