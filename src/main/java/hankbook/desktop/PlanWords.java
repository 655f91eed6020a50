package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.Fault;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Length;
import hankbook.plan.WarpPart;
import hankbook.studio.NotDone;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What is said of plans and their fields. */
final class PlanWords {
  private PlanWords() {}

  /** What a field is called on the screen. */
  static String caption(PlanPart part, String key) {
    return switch (key) {
      case "name" -> "Name";
      case "count" -> "Count";
      case "length" -> part == PlanPart.PIECES ? "Length" : part == PlanPart.WARP ? "Warp length" : "Woven length";
      case "width" -> part == PlanPart.WEFT ? "Part of reed" : "Width";
      case "hems" -> "Hems";
      case "fringe" -> "Fringe";
      case "sett" -> "Sett";
      case "ends" -> part == PlanPart.WARP ? "All ends" : "Ends";
      case "endsMultiple" -> "Ends in units of";
      case "selvedgeEnds" -> "Selvedge ends";
      case "endsPerUnit" -> "Ends per unit";
      case "repeats" -> "Repeats";
      case "units" -> "Units";
      case "yarn" -> part == PlanPart.SELVEDGE ? "Selvedge yarn" : "Yarn";
      case "colour" -> part == PlanPart.SELVEDGE ? "Selvedge colour" : "Colour";
      case "share" -> "Share";
      case "strands" -> "Strands";
      case "picks" -> "Picks";
      case "warpTakeUp" -> "Warp take-up";
      case "weftTakeUp" -> "Weft take-up";
      case "drawIn" -> "Draw-in";
      case "lengthShrinkage" -> "Shrinkage, length";
      case "widthShrinkage" -> "Shrinkage, width";
      case "sampling" -> "Sampling";
      case "loomWaste" -> "Loom waste";
      case "gap" -> "Gap between";
      case "winding" -> "Winding loss";
      case "repairEnds" -> "Repair ends";
      case "roundUpTo" -> "Round warp up to";
      case "threads" -> "Threads together";
      case "mark" -> "Mark";
      case "oneLot" -> "One dye lot";
      case "succession" -> "Order, from left to right";
      case "weftSuccession" -> "Order of picks, from the first";
      case "extendLeft" -> "Units more, left";
      case "extendRight" -> "Units more, right";
      case "loom" -> "Loom";
      case "reed" -> "Reed";
      case "weave" -> "Weave";
      case "sley" -> "Ends in a dent";
      default -> throw new IllegalArgumentException("key is \"" + key + "\", wanted one of a plan's");
    };
  }

  /** What might be typed into a field; where the field may stay empty, what that means. */
  static String example(PlanPart part, String key) {
    return switch (key) {
      case "name" -> "towel";
      case "length" -> part == PlanPart.PIECES ? "70 cm" : "from pieces";
      case "width" -> part == PlanPart.WEFT ? "1" : "48 cm";
      case "ends" -> part == PlanPart.WARP ? "from width" : "120";
      case "sett", "picks" -> "10/cm";
      case "count", "endsMultiple", "repeats", "units", "strands", "threads" -> "1";
      case "share" -> part == PlanPart.ORDER ? "0.5" : "1";
      case "endsPerUnit" -> "4";
      case "selvedgeEnds", "repairEnds", "extendLeft", "extendRight" -> "0";
      case "mark" -> "the colour";
      case "oneLot" -> "no";
      case "loom" -> "any";
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
      case PLAN -> "Plan";
      case PIECES -> "Piece";
      case WARP -> "Warp";
      case SELVEDGE -> "Selvedge";
      case SECTIONS -> "Section";
      case ORDER -> "Order of ends";
      case WEFT -> "Weft";
      case ALLOWANCES -> "Allowances";
      case WINDING -> "Winding";
    };
  }

  /** Where a field stands: {@code Piece 1, length}. */
  static String place(PlanField field) {
    String row = group(field.part()) + (field.part().isList() ? " " + field.row() : "");
    String key = field.key().isEmpty() ? "" : caption(field.part(), field.key());
    if (key.isEmpty()) {
      return row;
    }
    return field.part() == PlanPart.PLAN || key.startsWith(row) ? key : row + ", " + key.substring(0, 1).toLowerCase(Locale.ROOT) + key.substring(1);
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
    return where + (fault.found().isBlank() ? " is still wanted: " : " reads '" + fault.found() + "', wanted ") + fault.wanted() + ".";
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
    return trouble instanceof NotDone ? told : "That did not work, and the fault is Hankbook's own: " + told + ". The journal shows whether yarn was moved.";
  }

  /** A length along the warp, to the centimetre. */
  static String fine(Length length) {
    return Wording.warp(length);
  }

  static String part(WarpPart part) {
    return switch (part) {
      case CLOTH -> "cloth";
      case HEMS -> "hems";
      case SHRINKAGE -> "shrinkage";
      case TAKE_UP -> "take-up";
      case FRINGE -> "fringe";
      case GAPS -> "gaps";
      case SAMPLING -> "sampling";
      case LOOM_WASTE -> "loom waste";
      case ROUNDING -> "rounding";
    };
  }

  /** The verdict on a plan in a sentence. */
  static String verdict(Standing standing, PlanCheck check) {
    return switch (standing) {
      case SHORT -> shortOf(check);
      case TIGHT -> "There is enough, but it might run short.";
      default -> "The shelf covers this plan.";
    };
  }

  /** Which yarns are short: {@code Gorse Gold is short.} */
  static String shortOf(PlanCheck check) {
    List<String> yarns = check.covers().stream().filter(cover -> cover.verdict() == Verdict.SHORT).map(cover -> cover.yarn().toString()).toList();
    String last = yarns.get(yarns.size() - 1);
    return yarns.size() == 1 ? last + " is short." : String.join(", ", yarns.subList(0, yarns.size() - 1)) + " and " + last + " are short.";
  }

  /** How likely a yarn is to run out, in a sentence. */
  static String risk(Cover cover) {
    if (cover.margin().isNegative()) {
      return "Short by " + Wording.yarn(cover.margin().negated()) + ".";
    }
    if (cover.verdict() == Verdict.SHORT) {
      return "The metres suffice, whole ends do not.";
    }
    return "The risk of running short is " + cover.chance().words() + ".";
  }
}
