package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.QueuedPlan;

/**
 * What a plan asks of one yarn at its turn, as a cell says it.
 *
 * @param need how much
 * @param standing of the yarn in the plan
 * @param lack what lacks; empty where nothing does
 * @param changed whether it would be so only in the order that is tried
 */
record AheadCell(String need, Standing standing, String lack, boolean changed) {
  static AheadCell of(QueuedPlan.Claim claim, boolean changed) {
    return new AheadCell(Wording.metres(claim.need()), Standing.of(claim.verdict()), claim.lack().isZero() ? "" : Wording.metres(claim.lack()), changed);
  }

  /** How it stands and what lacks. */
  String verdict() {
    return lack.isEmpty() ? standing.word() : Say.text("{0}, lacks {1}", standing.word(), lack);
  }
}
