package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.studio.NotDone;
import java.util.UUID;

/** What can be done with the yarn of a plan. */
enum PlanAct {
  RESERVE,
  RESERVE_WHAT_THERE_IS,
  RELEASE,
  WIND,
  PUT_AWAY;

  String words() {
    return switch (this) {
      case RESERVE -> Say.text("Reserve yarn");
      case RESERVE_WHAT_THERE_IS -> Say.text("Reserve what there is");
      case RELEASE -> Say.text("Release");
      case WIND -> Say.text("Wind: draw onto the loom");
      case PUT_AWAY -> Say.text("Put away");
    };
  }

  /** Whether it goes by what the plan says. */
  boolean reserves() {
    return this == RESERVE || this == RESERVE_WHAT_THERE_IS;
  }

  /** Does it; may take long. */
  void run(PlanDesk desk, UUID id, String plan, int version) throws BadInput, NotDone {
    switch (this) {
      case RESERVE -> desk.reserve(id, plan, version, false);
      case RESERVE_WHAT_THERE_IS -> desk.reserve(id, plan, version, true);
      case RELEASE -> desk.release(id, plan);
      case WIND -> desk.draw(id, plan);
      case PUT_AWAY -> desk.putAway(plan);
    }
  }

  /** What was done, now that it is. */
  String done(PlanLife life) {
    return switch (this) {
      case RESERVE, RESERVE_WHAT_THERE_IS ->
          life.reserved().isAny() ? Say.text("Reserved: {0}.", life.reserved().words()) : Say.text("Nothing more to reserve: all of its yarn is on the loom.");
      case RELEASE -> Say.text("Released: nothing is set aside for this plan any more.");
      case WIND -> Say.text("On the loom: {0}.", life.onLoom().words());
      case PUT_AWAY -> Say.text("Put away: the plan is off the list.");
    };
  }

  /** Why it cannot be done now; empty where it can. */
  String hindrance(PlanAnswer answer, PlanLife life) {
    return switch (this) {
      case RESERVE, RESERVE_WHAT_THERE_IS -> life.isSquared() ? squared() : hindrance(answer);
      case RELEASE -> life.reserved().isAny() ? "" : Say.text("Nothing is reserved for this plan.");
      case WIND -> life.isSquared() ? squared() : life.reserved().isAny() ? "" : Say.text("Reserve its yarn first: only that can be drawn.");
      case PUT_AWAY -> life.reserved().isAny() || life.onLoom().isAny() ? Say.text("It has yarn reserved or on the loom.") : "";
    };
  }

  private static String squared() {
    return Say.text("It was woven and its book squared; keep it under a new name to weave it again.");
  }

  private String hindrance(PlanAnswer answer) {
    return switch (answer) {
      case PlanAnswer.Reckoning _ -> Say.text("The answer is still being reckoned.");
      case PlanAnswer.Unfinished _ -> Say.text("The plan is unfinished.");
      case PlanAnswer.Reckoned(PlanCheck check) when this == RESERVE_WHAT_THERE_IS && !check.isShort() -> Say.text("Nothing is short.");
      case PlanAnswer.Reckoned(PlanCheck check) when this == RESERVE_WHAT_THERE_IS ->
          check.shares().isEmpty() ? Say.text("The shelf has none of its yarn.") : "";
      case PlanAnswer.Reckoned(PlanCheck check) -> check.isShort() ? PlanWords.shortOf(check) : "";
    };
  }
}
