package hankbook.plan;

import java.util.List;

/**
 * Once along the warping path with all threads that are held.
 *
 * @param held the ends it lays, side by side; at least one run
 */
public record Pass(List<Run> held) {
  public Pass {
    held = List.copyOf(held);
  }

  /** All ends it lays. */
  public int ends() {
    return held.stream().mapToInt(Run::ends).sum();
  }

  /** The ends of one kind that it lays. */
  public int ends(EndKind kind) {
    return held.stream().filter(run -> run.kind().equals(kind)).mapToInt(Run::ends).sum();
  }
}
