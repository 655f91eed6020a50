package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.desktop.say.Say;
import java.util.Comparator;

/** How a plan, or one yarn of it, stands: the word that is said and the mark that goes with it. */
enum Standing {
  RECKONING,
  UNFINISHED,
  COVERED,
  TIGHT,
  SHORT;

  String word() {
    return switch (this) {
      case RECKONING -> Say.text("reckoning");
      case UNFINISHED -> Say.text("unfinished");
      case COVERED -> Say.text("COVERED");
      case TIGHT -> Say.text("TIGHT");
      case SHORT -> Say.text("SHORT");
    };
  }

  /** A plan stands as the worst of its yarns. */
  static Standing of(PlanCheck check) {
    return check.covers().stream().map(Cover::verdict).max(Comparator.naturalOrder()).map(Standing::of).orElse(COVERED);
  }

  static Standing of(Verdict verdict) {
    return switch (verdict) {
      case COVERED -> COVERED;
      case TIGHT -> TIGHT;
      case SHORT -> SHORT;
    };
  }
}
