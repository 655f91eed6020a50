package hankbook.desktop;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.plan.OrderEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something that would make a short plan fit.
 *
 * @param words what it is, in a sentence
 * @param change the field it changes and the text that goes there; none where it is not done in the plan
 */
record Remedy(String words, Optional<Change> change) {
  /** Another text in one field. */
  record Change(PlanField field, String text) {}

  static List<Remedy> of(PlanDraft draft, PlanCheck check, Fit fit) {
    List<Remedy> remedies = new ArrayList<>();
    int ends = check.yardage().width().ends();
    fit.mostPieces().ifPresent(most -> {
      if (most > 0) {
        remedies.add(change("Weave only " + most + ".", new PlanField(PlanPart.PIECES, 1, "count"), Long.toString(most)));
      }
    });
    if (fit.longestWarp().isPositive() && fit.longestWarp().compareTo(check.yardage().warp().total()) < 0) {
      String words = "Wind a warp of " + PlanWords.fine(fit.longestWarp()) + " with these " + ends + " ends.";
      remedies.add(change(words, PlanField.of(PlanPart.WARP, "length"), fit.longestWarp().toString()));
    }
    if (fit.mostEnds() > 0 && fit.mostEnds() < ends && endsMayBeGiven(draft, check)) {
      String words = "Set only " + fit.mostEnds() + " ends of this length.";
      remedies.add(change(words, PlanField.of(PlanPart.WARP, "ends"), Integer.toString(fit.mostEnds())));
    }
    fit.buy().forEach(purchase -> buy(purchase).ifPresent(remedies::add));
    return remedies;
  }

  private static Remedy change(String words, PlanField field, String text) {
    return new Remedy(words, Optional.of(new Change(field, text)));
  }

  private static Optional<Remedy> buy(Purchase purchase) {
    return purchase.putUps().isEmpty()
        ? Optional.empty()
        : Optional.of(new Remedy("Buy " + purchase.putUps().getAsInt() + " more of " + purchase.yarn() + ", as large as the last.", Optional.empty()));
  }

  /** Where sections or an order counted in ends make the number of ends, one number more would contradict them. */
  private static boolean endsMayBeGiven(PlanDraft draft, PlanCheck check) {
    return draft.rows(PlanPart.SECTIONS).isEmpty() && check.plan().warp().order().stream().noneMatch(entry -> entry.amount() instanceof OrderEntry.Ends);
  }
}
