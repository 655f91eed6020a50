package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.Fault;
import hankbook.exchange.OrderedEnds;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanFaults;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanFile;
import hankbook.exchange.PlanPart;
import java.util.List;
import java.util.OptionalLong;

/** What can be said of a draft. */
sealed interface PlanAnswer {
  Standing standing();

  /** Nothing yet. */
  record Reckoning() implements PlanAnswer {
    @Override
    public Standing standing() {
      return Standing.RECKONING;
    }
  }

  /**
   * It cannot be reckoned as it is.
   *
   * @param words why, in a sentence
   * @param faults the fields at fault; none where only the whole does not add up
   * @param endsInOrder how many ends the warp could be given to agree with its order, where only these differ
   */
  record Unfinished(String words, List<Fault> faults, OptionalLong endsInOrder) implements PlanAnswer {
    Unfinished(String words, List<Fault> faults) {
      this(words, faults, OptionalLong.empty());
    }

    @Override
    public Standing standing() {
      return Standing.UNFINISHED;
    }
  }

  /**
   * It was held against the shelf.
   *
   * @param check the whole answer
   */
  record Reckoned(PlanCheck check) implements PlanAnswer {
    @Override
    public Standing standing() {
      return Standing.of(check);
    }
  }

  private static OptionalLong takeable(PlanDraft draft) {
    return OrderedEnds.of(draft).map(OrderedEnds::takeable).orElseGet(OptionalLong::empty);
  }

  /** Reads a draft and holds it against the shelf; may take long. */
  static PlanAnswer of(PlanDraft draft, PlanDesk desk) {
    try {
      return new Reckoned(desk.check(PlanFile.read("plan", draft.json())));
    } catch (BadInput unreadable) {
      return new Unfinished(PlanWords.why(unreadable, draft.text(PlanField.of(PlanPart.PLAN, "name"))), PlanFaults.of(draft), takeable(draft));
    }
  }
}
