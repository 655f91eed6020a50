package hankbook.studio;

import hankbook.measure.Length;
import hankbook.yarn.Measures;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.util.Optional;

/** How much yarn is wound off a skein, and so how surely its metres are known. */
public sealed interface WoundOff {
  /** All of it that is free. Where nothing is left on the skein, its metres are as sure as they were there. */
  record All() implements WoundOff {}

  /**
   * A length that was not measured in any way that is known.
   *
   * @param length over zero
   */
  record Metres(Length length) implements WoundOff {}

  /**
   * What was counted on the reel that it was wound with.
   *
   * @param turns and the reel
   */
  record Counted(Turns turns) implements WoundOff {}

  /**
   * What the balance says of a new package after it was wound, by the yarn's own grist or its yarn number.
   *
   * @param weighing of the new package
   */
  record Weighed(Weighing weighing) implements WoundOff {}

  /** What was read off what was wound; nothing where it was not measured. */
  default Measures measures() {
    return switch (this) {
      case All _, Metres _ -> new Measures(Optional.empty(), Optional.empty(), Optional.empty());
      case Counted(Turns turns) -> new Measures(Optional.empty(), Optional.of(turns), Optional.empty());
      case Weighed(Weighing weighing) -> new Measures(Optional.empty(), Optional.empty(), Optional.of(weighing));
    };
  }
}
