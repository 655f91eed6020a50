package hankbook.plan;

import hankbook.gear.Sley;
import hankbook.gear.Weave;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.util.Optional;

/**
 * How a loom is to be dressed for a plan, as far as the plan says.
 *
 * @param loom the loom's name
 * @param reed the reed's name, or its dents such as {@code 12/in}
 * @param weave the weave of the ground
 * @param sley ends in the dents of the reed
 */
public record Dressing(Optional<String> loom, Optional<String> reed, Optional<Weave> weave, Optional<Sley> sley) {
  /** Nothing said. */
  public static final Dressing UNSAID = new Dressing(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  public Dressing {
    loom = loom.map(OneLine::of);
    reed = reed.map(OneLine::of);
    if (loom.filter(String::isEmpty).isPresent()) {
      throw new Unreadable("", "the loom's name, or no loom at all");
    }
    if (reed.filter(String::isEmpty).isPresent()) {
      throw new Unreadable("", "the reed's name or its dents, or no reed at all");
    }
  }
}
