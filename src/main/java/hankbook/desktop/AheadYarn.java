package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanQueue;
import hankbook.yarn.YarnColour;

/**
 * One yarn over all plans, as the head of its column says it.
 *
 * @param yarn the yarn
 * @param hex its colour, or empty
 * @param need of all plans
 * @param free for them
 * @param lack of all of them; empty where nothing lacks
 */
record AheadYarn(YarnColour yarn, String hex, String need, String free, String lack) {
  static AheadYarn of(PlanQueue.YarnTotal total, String hex) {
    String lack = total.lack().isZero() ? "" : Wording.metres(total.lack());
    return new AheadYarn(total.yarn(), hex, Wording.metres(total.need()), Wording.metres(total.free()), lack);
  }

  /** All of it in one sentence. */
  String words() {
    return lack.isEmpty()
        ? Say.text("{0}, all plans need {1}, free {2}, nothing lacks", yarn, need, free)
        : Say.text("{0}, all plans need {1}, free {2}, lacks {3}", yarn, need, free, lack);
  }
}
