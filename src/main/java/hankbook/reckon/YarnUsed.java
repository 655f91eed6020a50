package hankbook.reckon;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.Optional;

/**
 * What a plan really took of one yarn.
 *
 * @param yarn the yarn and its colour
 * @param fibre what it is spun of, or empty
 * @param grist the grist that is known best of it
 * @param used all that left its skeins for the plan and did not come back
 * @param thrums of it loom waste and trimmings, as far as they were weighed or measured
 * @param sampled of it used up in samples, as far as they were weighed or measured
 * @param uncertainty the standard uncertainty of what was used
 */
public record YarnUsed(YarnColour yarn, String fibre, Optional<Grist> grist, Length used, Length thrums, Length sampled, Length uncertainty) {
  /** What is woven, or cannot be told from it. */
  public Length rest() {
    return used.minus(thrums).minus(sampled);
  }
}
