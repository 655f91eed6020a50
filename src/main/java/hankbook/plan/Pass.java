package hankbook.plan;

import java.util.List;

/**
 * Once along the warping path with all threads that are held.
 *
 * @param held the ends it lays, side by side; at least one run
 */
public record Pass(List<WoundRun> held) {
  public Pass {
    held = List.copyOf(held);
  }

  /** All ends it lays. */
  public int ends() {
    return held.stream().mapToInt(WoundRun::ends).sum();
  }

  /** The ends of one kind that it lays. */
  public int ends(WoundEnd kind) {
    return held.stream().filter(run -> run.kind().equals(kind)).mapToInt(WoundRun::ends).sum();
  }
}
