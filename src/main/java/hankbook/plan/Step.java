package hankbook.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Passes that follow each other and lay the same: all of one run, or the same ends side by side again and again.
 *
 * @param passes at least one
 */
public record Step(List<Pass> passes) {
  public Step {
    passes = List.copyOf(passes);
  }

  /** All ends it lays. */
  public int ends() {
    return passes.stream().mapToInt(Pass::ends).sum();
  }

  /**
   * Each run by itself, so many threads of its yarn together.
   *
   * @param threads held together, at least 1
   * @param evenly whether all passes of a run hold as nearly the same number as can be, rather than the last what is left
   */
  public static Step ofRun(WoundRun run, int threads, boolean evenly) {
    int passes = Math.ceilDiv(run.ends(), threads);
    List<Pass> cut = new ArrayList<>();
    int left = run.ends();
    for (int i = 0; i < passes; i++) {
      int held = evenly ? Math.ceilDiv(left, passes - i) : Math.min(threads, left);
      cut.add(new Pass(List.of(run.of(held))));
      left -= held;
    }
    return new Step(cut);
  }

  /**
   * The ends as they come, so many threads together whatever their yarns.
   *
   * @param threads held together, at least 1
   */
  public static List<Step> across(List<WoundRun> runs, int threads) {
    List<Step> steps = new ArrayList<>();
    List<Pass> alike = new ArrayList<>();
    for (Pass pass : passesAcross(runs, threads)) {
      if (!alike.isEmpty() && !alike.getLast().equals(pass)) {
        steps.add(new Step(alike));
        alike.clear();
      }
      alike.add(pass);
    }
    if (!alike.isEmpty()) {
      steps.add(new Step(alike));
    }
    return steps;
  }

  private static List<Pass> passesAcross(List<WoundRun> runs, int threads) {
    List<Pass> passes = new ArrayList<>();
    List<WoundRun> held = new ArrayList<>();
    int free = threads;
    for (WoundRun run : runs) {
      for (int left = run.ends(); left > 0; ) {
        int taken = Math.min(left, free);
        held.add(run.of(taken));
        left -= taken;
        free -= taken;
        if (free == 0) {
          passes.add(new Pass(held));
          held.clear();
          free = threads;
        }
      }
    }
    if (!held.isEmpty()) {
      passes.add(new Pass(held));
    }
    return passes;
  }
}
