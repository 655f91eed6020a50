package hankbook.allot;

import java.util.stream.IntStream;

/** The axes of a table over the numbers of ends, one to a kind; the kind of which most are wanted lies along the rows. A place is a cell of it. */
final class Axes {
  private final Task task;
  private final int[] kinds;
  private final int[] sizes;

  /** At most so many ends of each kind are ever looked at. */
  Axes(Task task, long[] mostEnds) {
    this.task = task;
    kinds = IntStream.range(0, task.kinds()).boxed().sorted((one, other) -> task.ends(other) - task.ends(one)).mapToInt(Integer::intValue).toArray();
    sizes = IntStream.of(kinds).map(kind -> (int) Math.min(task.ends(kind), mostEnds[kind]) + 1).toArray();
  }

  int count() {
    return kinds.length;
  }

  /** How many places a row has. */
  int row() {
    return sizes.length == 0 ? 1 : sizes[0];
  }

  /** How many places there are, which may be more than can be held. */
  double places() {
    return IntStream.of(sizes).asDoubleStream().reduce(1, (one, other) -> one * other);
  }

  int kind(int axis) {
    return kinds[axis];
  }

  /** Yarn in one end along an axis; none where there are no ends. */
  long each(int axis) {
    return kinds.length == 0 ? 0 : task.each(kinds[axis]);
  }

  /** How many rows are slid along, at most, for each row of the table when a skein is added. */
  double uses(Slot slot) {
    return IntStream.range(1, kinds.length).mapToDouble(axis -> 1 + most(slot, axis, slot.usable())).reduce(2, (one, other) -> one * other);
  }

  /** How many ends along an axis so much of a skein gives. */
  int most(Slot slot, int axis, long length) {
    return kinds.length == 0 || (slot.role() >> kinds[axis] & 1) == 0 ? 0 : Math.min(sizes[axis] - 1, task.endsFrom(kinds[axis], length));
  }

  /** The start of the row to which ends, by axis, are added to come to a row; beyond it where it would lie outside the table. */
  int rowBefore(int start, int[] ends) {
    int from = start;
    int stride = 1;
    for (int axis = 0; axis < sizes.length; axis++) {
      if (axis > 0 && start / stride % sizes[axis] < ends[axis]) {
        return start + 1;
      }
      from -= axis == 0 ? 0 : ends[axis] * stride;
      stride *= sizes[axis];
    }
    return from;
  }

  /** The place before ends, by kind, were added. */
  int before(int place, int[] ends) {
    int from = place;
    int stride = 1;
    for (int axis = 0; axis < kinds.length; axis++) {
      from -= ends[kinds[axis]] * stride;
      stride *= sizes[axis];
    }
    return from;
  }

  /** The ends along an axis at a place. */
  int ends(int place, int axis) {
    int rest = place;
    for (int i = 0; i < axis; i++) {
      rest /= sizes[i];
    }
    return rest % sizes[axis];
  }

  /** The yarn in all ends at a place. */
  long warp(int place) {
    return IntStream.range(0, kinds.length).mapToLong(axis -> ends(place, axis) * each(axis)).sum();
  }
}
