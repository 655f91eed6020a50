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
  WIND("Wind: draw onto the loom"),
  PUT_AWAY("Put away");

  private static final String SQUARED = "It was woven and its book squared; keep it under a new name to weave it again.";

  private final String words;

  PlanAct(String words) {
    this.words = words;
  }

  String words() {
    return words;
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
          life.reserved().isAny() ? "Reserved: " + life.reserved().words() + "." : "Nothing more to reserve: all of its yarn is on the loom.";
      case RELEASE -> "Released: nothing is set aside for this plan any more.";
      case WIND -> "On the loom: " + life.onLoom().words() + ".";
      case PUT_AWAY -> "Put away: the plan is off the list.";
    };
  }

  /** Why it cannot be done now; empty where it can. */
  String hindrance(PlanAnswer answer, PlanLife life) {
    return switch (this) {
      case RESERVE, RESERVE_WHAT_THERE_IS -> life.isSquared() ? SQUARED : hindrance(answer);
      case RELEASE -> life.reserved().isAny() ? "" : "Nothing is reserved for this plan.";
      case WIND -> life.isSquared() ? SQUARED : life.reserved().isAny() ? "" : "Reserve its yarn first: only that can be drawn.";
      case PUT_AWAY -> life.reserved().isAny() || life.onLoom().isAny() ? "It has yarn reserved or on the loom." : "";
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
