package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.desktop.say.Say;
import java.util.Comparator;

/** How a plan, or one yarn of it, stands: the word that is said and the mark that goes with it. */
enum Standing {
  RECKONING("reckoning"),
  UNFINISHED("unfinished"),
  COVERED("COVERED"),
  TIGHT("TIGHT"),
  SHORT("SHORT");

  private final String word;

  Standing(String word) {
    this.word = word;
  }

  String word() {
    return Say.known(word);
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
