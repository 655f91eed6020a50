package hankbook.desktop;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.desktop.say.Say;
import hankbook.exchange.DraftRow;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.plan.PlanName;
import java.util.Collection;
import java.util.Set;

/** How a plan begins: one row of everything, and allowances as the settings have them. */
final class NewPlan {
  private static final Set<String> NOTHING = Set.of("0", "0 %", "0 cm");

  private NewPlan() {}

  /** A name that no plan has yet. */
  static String name(Collection<String> taken) {
    return name(Say.text("New plan"), taken);
  }

  /** A name, or where a plan has it already the same with a number behind it. */
  static String name(String wanted, Collection<String> taken) {
    return PlanName.free(wanted, name -> taken.stream().anyMatch(other -> PlanName.alike(name, other)));
  }

  /** @param standing by which plans begin */
  static PlanDraft draft(String name, Judgement standing) {
    PlanDraft draft = PlanDraft.BLANK.with(PlanField.of(PlanPart.PLAN, "name"), name);
    return completed(draft, standing).withRow(PlanPart.ORDER, DraftRow.BLANK.with("share", "1")).withRow(PlanPart.WEFT, DraftRow.BLANK);
  }

  /** A plan that says nothing but its yarns and their order, with what every new plan has besides. */
  static PlanDraft completed(PlanDraft begun, Judgement standing) {
    PlanDraft draft = begun;
    for (Setting setting : Setting.values()) {
      String content = standing.text(setting);
      if (setting.isStanding() && !NOTHING.contains(content)) {
        PlanPart part = setting == Setting.THREADS ? PlanPart.WINDING : PlanPart.ALLOWANCES;
        draft = draft.with(PlanField.of(part, setting.key()), content);
      }
    }
    return draft.withRow(PlanPart.PIECES, row(PlanPart.PIECES));
  }

  /** A row that is added to a list. */
  static DraftRow row(PlanPart part) {
    return part == PlanPart.PIECES ? DraftRow.BLANK.with("count", "1") : DraftRow.BLANK;
  }
}
