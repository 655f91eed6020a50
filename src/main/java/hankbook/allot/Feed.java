package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.WoundEnd;
import java.util.List;

/**
 * How the ends of one kind come from their skeins.
 *
 * @param kind the ends
 * @param ends all of them, spare ends too
 * @param passes that lay at least one of them
 * @param threads the most of them held together
 * @param stints which skein feeds which position when, by position and pass; empty where some ends have no skein
 * @param unfed ends that no skein gives
 */
public record Feed(WoundEnd kind, int ends, int passes, int threads, List<Stint> stints, int unfed) {
  public Feed {
    stints = List.copyOf(stints);
  }

  /** All the yarn that is wound of it. */
  public Length length() {
    return new Length(Math.multiplyExact(kind.perEnd().tenthsOfMillimetre(), ends));
  }
}
