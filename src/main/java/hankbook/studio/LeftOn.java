package hankbook.studio;

import hankbook.reckon.Leftover;
import hankbook.yarn.Measures;
import java.util.Optional;

/** What was read off a skein after a cloth was cut off. */
final class LeftOn {
  private LeftOn() {}

  static Measures measures(Leftover.Left left) {
    return switch (left) {
      case Leftover.Left.UsedUp _, Leftover.Left.OfLength _ -> Measures.NONE;
      case Leftover.Left.Weighed(var weighing) -> new Measures(Optional.empty(), Optional.empty(), Optional.of(weighing));
      case Leftover.Left.Counted(var turns) -> new Measures(Optional.empty(), Optional.of(turns), Optional.empty());
    };
  }
}
