package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.studio.NotDone;
import java.util.UUID;

/** What can be done with the yarn of a plan. */
enum PlanAct {
  RESERVE("Reserve yarn"),
  RESERVE_WHAT_THERE_IS("Reserve what there is"),
  RELEASE("Release"),
  WIND("Wind: draw onto the loom");

  private final String words;

  PlanAct(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Does it; may take long. */
  void run(PlanDesk desk, UUID id, String plan) throws BadInput, NotDone {
    switch (this) {
      case RESERVE -> desk.reserve(id, plan, false);
      case RESERVE_WHAT_THERE_IS -> desk.reserve(id, plan, true);
      case RELEASE -> desk.release(id, plan);
      case WIND -> desk.draw(id, plan);
    }
  }

  /** What was done, now that it is. */
  String done(PlanLife life) {
    String skeins = Wording.count(life.skeins(), "skein", "skeins");
    return switch (this) {
      case RESERVE, RESERVE_WHAT_THERE_IS -> "Reserved: " + Wording.metres(life.reserved()) + " of " + skeins + ".";
      case RELEASE -> "Released: nothing is set aside for this plan any more.";
      case WIND -> "On the loom: " + Wording.metres(life.onLoom()) + " of " + skeins + ".";
    };
  }

  /** Why it cannot be done now; empty where it can. */
  String hindrance(PlanAnswer answer, PlanLife life) {
    return switch (this) {
      case RESERVE, RESERVE_WHAT_THERE_IS -> hindrance(answer);
      case RELEASE -> life.reserved().isPositive() ? "" : "Nothing is reserved for this plan.";
      case WIND -> life.reserved().isPositive() ? "" : "Reserve its yarn first: only that can be drawn.";
    };
  }

  private String hindrance(PlanAnswer answer) {
    return switch (answer) {
      case PlanAnswer.Reckoning _ -> "The answer is still being reckoned.";
      case PlanAnswer.Unfinished _ -> "The plan is unfinished.";
      case PlanAnswer.Reckoned(PlanCheck check) when this == RESERVE_WHAT_THERE_IS && !check.isShort() -> "Nothing is short.";
      case PlanAnswer.Reckoned(PlanCheck check) when this == RESERVE_WHAT_THERE_IS ->
          check.shares().isEmpty() ? "The shelf has none of its yarn." : "";
      case PlanAnswer.Reckoned(PlanCheck check) -> check.isShort() ? PlanWords.shortOf(check) : "";
    };
  }
}
