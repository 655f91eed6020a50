package hankbook.ledger;

import java.time.Instant;

/**
 * The last thing an author said that moves no yarn, and so is no entry.
 *
 * @param what of which sort it was
 * @param name of the plan, the setting, the loom, the reed or the yarn, the code of the skein, or the number of the purchase or of the order of plans
 * @param when it was written down
 */
public record LastSaid(What what, String name, Instant when) {
  /** Of which sort. */
  public enum What {
    PLAN,
    SETTING,
    LOOM,
    REED,
    PURCHASE,
    /** A skein's lot, place, cost or day. */
    SKEIN,
    /** A skein that was measured again and held what the book said. */
    MEASURE,
    /** A weighed sample of a yarn. */
    SAMPLE,
    /** The day on which a skein on order is expected. */
    DUE,
    /** The order in which plans are woven. */
    TURNS,
    /** What a plan came to, as far as it posted no entry. */
    ACTUALS
  }
}
