package hankbook.plan;

import java.util.ArrayList;
import java.util.List;

/** Groups that follow each other, neighbours of the same mark joined, up to as many as are wanted. */
final class JoinedRuns {
  private final int limit;
  private final List<Run> joined = new ArrayList<>();

  JoinedRuns(int limit) {
    this.limit = limit;
  }

  /** Takes one group more; false where it is one too many. */
  boolean add(Run run) {
    boolean same = !joined.isEmpty() && joined.getLast().mark().equals(run.mark());
    if (!same && joined.size() >= limit) {
      return false;
    }
    joined.add(same ? new Run(joined.removeLast().count() + run.count(), run.mark()) : run);
    return true;
  }

  List<Run> runs() {
    return List.copyOf(joined);
  }
}
