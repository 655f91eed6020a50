package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A good choice where the search for the best was given up: from the best so far, lot by lot and then skein by skein, shortest first, what
 * can be spared is left out.
 */
final class Thrift {
  private static final long STEPS = 100_000;

  private final Choice start;
  private final Effort effort = new Effort(STEPS);
  private List<Slot> slots;

  Thrift(Choice start) {
    this.start = start;
    this.slots = start.slots();
  }

  Choice choice() {
    Task task = start.task();
    List<String> lots = slots.stream().map(slot -> slot.skein().lotOrOwn()).distinct().sorted(Comparator.comparingLong(this::held)).toList();
    for (String lot : lots) {
      tryWith(slots.stream().map(slot -> slot.skein().lotOrOwn().equals(lot) ? new Slot(slot.skein(), slot.role() & task.weftBit(), 0) : slot).toList());
      tryWith(slots.stream().map(slot -> slot.skein().lotOrOwn().equals(lot) ? new Slot(slot.skein(), slot.role() & ~task.weftBit(), 0) : slot).toList());
    }
    List<Slot> spared = new ArrayList<>(slots);
    spared.sort(Comparator.comparing((Slot slot) -> slot.skein().opened()).thenComparingLong(Slot::free));
    for (Slot slot : spared) {
      tryWith(slots.stream().filter(other -> !other.equals(slot)).toList());
    }
    return new Choice(task, start.yields(), start.shelf(), start.effort(), start.aim(), slots);
  }

  private long held(String lot) {
    return slots.stream().filter(slot -> slot.skein().lotOrOwn().equals(lot)).mapToLong(Slot::free).sum();
  }

  private void tryWith(List<Slot> fewer) {
    if (new Packing(start.task(), start.yields(), fewer, effort).covers(start.aim().uncovered())) {
      slots = fewer;
    }
  }
}
