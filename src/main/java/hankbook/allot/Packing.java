package hankbook.allot;

import java.util.ArrayList;
import java.util.List;

/**
 * What some skeins in their roles can cover, exactly: denied by the yields, shown by a quick filling, or else settled by a dynamic
 * programme that passes once through the skeins ({@link Frontier}).
 */
final class Packing {
  private static final double MOST_PLACES = 4_000_000;
  private static final double MOST_KEPT_PLACES = 12_000_000;
  private static final double PLACES_TO_A_STEP = 100;

  private final Task task;
  private final List<Slot> slots;
  private final Effort effort;
  private final long[] most;
  private final Yields yields;

  Packing(Task task, Yields yields, List<Slot> slots, Effort effort) {
    this.task = task;
    this.yields = yields;
    this.slots = slots;
    this.effort = effort;
    most = new long[yields.count()];
    for (Slot slot : slots) {
      Yields.add(most, slot.setAside() == 0 ? yields.of(slot.skein(), slot.role()) : yields.of(slot));
    }
  }

  /** Whether no more than this need be left uncovered. Where the effort does not suffice to tell, no. */
  boolean covers(long uncovered) {
    if (!Yields.reaches(most, yields.wanted(uncovered))) {
      return false;
    }
    if (!effort.spend(1 + slots.size() / 3)) {
      return false;
    }
    return new Filling(task, slots).uncovered() <= uncovered || (affordable() && last().uncovered(last().best()) <= uncovered);
  }

  /** The least left uncovered. Where the effort does not suffice to tell, what a quick filling leaves. */
  long leastUncovered() {
    long quick = new Filling(task, slots).uncovered();
    return quick <= atLeast() || !affordable() ? quick : last().uncovered(last().best());
  }

  /** No choice leaves less. */
  private long atLeast() {
    long ends = 0;
    for (int kind = 0; kind < task.kinds(); kind++) {
      ends += Math.max(0, task.ends(kind) - most[kind]) * task.each(kind);
    }
    long apart = Math.max(ends, task.warp() - most[yields.warp()]) + Math.max(0, task.weft() - most[yields.weft()]);
    return Math.max(apart, task.warp() + task.weft() - most[yields.all()]);
  }

  /** How each skein is used so that no more than this is left uncovered; a quick filling where the effort does not suffice. */
  List<Portion> portions(long uncovered) {
    Filling filling = new Filling(task, slots);
    boolean settled = filling.uncovered() <= uncovered;
    if (settled || !keepable() || !affordable()) {
      return filling.portions();
    }
    List<Frontier> frontiers = new ArrayList<>(List.of(Frontier.start(task, axes())));
    slots.forEach(slot -> frontiers.add(frontiers.getLast().with(slot)));
    List<Portion> portions = new ArrayList<>();
    int place = frontiers.getLast().best();
    for (int i = slots.size() - 1; i >= 0; i--) {
      Portion portion = frontiers.get(i).into(place, slots.get(i), frontiers.get(i + 1));
      portions.add(portion);
      place = axes().before(place, portion.ends().stream().mapToInt(Integer::intValue).toArray());
    }
    return portions;
  }

  private Frontier last() {
    Frontier frontier = Frontier.start(task, axes());
    for (Slot slot : slots) {
      frontier = frontier.with(slot);
    }
    return frontier;
  }

  private Axes axes() {
    return new Axes(task, most);
  }

  private boolean keepable() {
    return axes().places() * slots.size() <= MOST_KEPT_PLACES || effort.refuse();
  }

  private boolean affordable() {
    Axes axes = axes();
    double places = axes.places();
    double steps = slots.stream().mapToDouble(slot -> places * axes.uses(slot)).sum() / PLACES_TO_A_STEP;
    return places > MOST_PLACES ? effort.refuse() : effort.spend((long) steps + 1);
  }
}
