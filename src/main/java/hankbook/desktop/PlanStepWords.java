package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanStep;
import java.util.List;

/** What is said of the life of a plan. */
final class PlanStepWords {
  private PlanStepWords() {}

  /** A step in a word or two. */
  static String name(PlanStep.Stage stage) {
    return switch (stage) {
      case PLANNED -> Say.text("planned");
      case RESERVED -> Say.text("reserved");
      case ON_LOOM -> Say.text("on the loom");
      case CUT_OFF -> Say.text("cut off");
      case SQUARED -> Say.text("squared");
    };
  }

  /** When it was come to, and with how much; empty of what was not, and of what nobody wrote down. */
  static List<String> facts(PlanStep step) {
    return List.of(step.date().map(Object::toString).orElse(""), amount(step)).stream().filter(fact -> !fact.isEmpty()).toList();
  }

  /** With how much yarn it was come to; empty where that says nothing. */
  static String amount(PlanStep step) {
    String length = Wording.yarn(step.amount());
    return step.amount().isZero() ? "" : switch (step.stage()) {
      case PLANNED -> "";
      case RESERVED, ON_LOOM -> Say.count(step.skeins(), "{1} of {0} skein", "{1} of {0} skeins", length);
      case CUT_OFF -> Say.text("{0} came back", length);
      case SQUARED -> Say.text("{0} in the cloth", length);
    };
  }

  /** Where a plan stands with a step, for who does not see its shape. */
  static String state(PlanStep step) {
    return switch (step.state()) {
      case DONE -> Say.text("done");
      case NOW -> Say.text("so far");
      case NEXT -> Say.text("next");
      case LATER -> Say.text("later");
      case LEFT_OUT -> Say.text("left out");
    };
  }

  /** What is to be done next; empty where nothing is. */
  static String next(List<PlanStep> steps) {
    return steps.stream().filter(step -> step.state() == PlanStep.State.NEXT).findFirst().map(step -> next(step.stage())).orElse("");
  }

  private static String next(PlanStep.Stage stage) {
    return switch (stage) {
      case PLANNED -> "";
      case RESERVED -> Say.text("Next: reserve its yarn.");
      case ON_LOOM -> Say.text("Next: wind it, which draws its yarn onto the loom.");
      case CUT_OFF -> Say.text("Next: weave it, cut it off and weigh what is left.");
      case SQUARED -> Say.text("Next: finish its book under After.");
    };
  }
}
