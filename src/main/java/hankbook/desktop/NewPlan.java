package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.DraftRow;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.plan.PlanName;
import java.util.Collection;
import java.util.Map;

/** How a plan begins: one row of everything, and allowances as they commonly are until the weaver has measured her own. */
final class NewPlan {
  private static final Map<String, String> COMMON =
      Map.of(
          "warpTakeUp", "8 % of cloth",
          "weftTakeUp", "5 % of cloth",
          "drawIn", "6 %",
          "lengthShrinkage", "8 %",
          "widthShrinkage", "8 %",
          "sampling", "30 cm",
          "loomWaste", "70 cm",
          "roundUpTo", "1 cm");

  private NewPlan() {}

  /** A name that no plan has yet. */
  static String name(Collection<String> taken) {
    return name(Say.text("New plan"), taken);
  }

  /** A name, or where a plan has it already the same with a number behind it. */
  static String name(String wanted, Collection<String> taken) {
    return PlanName.free(wanted, name -> taken.stream().anyMatch(other -> PlanName.alike(name, other)));
  }

  static PlanDraft draft(String name) {
    PlanDraft draft = PlanDraft.BLANK.with(PlanField.of(PlanPart.PLAN, "name"), name);
    return completed(draft).withRow(PlanPart.ORDER, DraftRow.BLANK.with("share", "1")).withRow(PlanPart.WEFT, DraftRow.BLANK);
  }

  /** A plan that says nothing but its yarns and their order, with what every new plan has besides. */
  static PlanDraft completed(PlanDraft begun) {
    PlanDraft draft = begun.with(PlanField.of(PlanPart.WINDING, "threads"), "1");
    for (Map.Entry<String, String> allowance : COMMON.entrySet()) {
      draft = draft.with(PlanField.of(PlanPart.ALLOWANCES, allowance.getKey()), allowance.getValue());
    }
    return draft.withRow(PlanPart.PIECES, row(PlanPart.PIECES));
  }

  /** A row that is added to a list. */
  static DraftRow row(PlanPart part) {
    return part == PlanPart.PIECES ? DraftRow.BLANK.with("count", "1") : DraftRow.BLANK;
  }
}
