package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;

/**
 * Passes once through the skeins, lot by lot, keeping for every tally the frontier of ends and weft: an exact dynamic programme that answers
 * whether some choice of skeins meets an aim.
 */
final class Sweep {
  private final Task task;
  private final Aim aim;
  private final List<Candidate> skeins;
  private final Set<Candidate> must;
  private final List<Map<Tally, Frontier>> layers = new ArrayList<>();

  /** Over these skeins, of which some must be touched. */
  Sweep(Task task, Aim aim, List<Candidate> skeins, Set<Candidate> must) {
    this.task = task;
    this.aim = aim;
    this.skeins = byLot(skeins);
    this.must = must;
    Frontier start = Frontier.start(mostEnds());
    boolean hopeful = start.prune(task, aim.uncovered(), coverableYet(0, Tally.START));
    layers.add(hopeful ? Map.of(Tally.START, start) : Map.of());
    for (int i = 0; i < this.skeins.size(); i++) {
      layers.add(after(i));
    }
  }

  private static List<Candidate> byLot(List<Candidate> skeins) {
    Map<String, List<Candidate>> lots = new LinkedHashMap<>();
    // Longest first, so that what cannot reach the aim shows early.
    skeins.stream()
        .sorted(Comparator.comparing(Candidate::free).reversed().thenComparing(Allotting.EARLIEST))
        .forEach(skein -> lots.computeIfAbsent(skein.lotOrOwn(), none -> new ArrayList<>()).add(skein));
    return lots.values().stream().flatMap(List::stream).toList();
  }

  private int mostEnds() {
    long capacity = skeins.stream().mapToLong(skein -> task.endsFrom(skein.free().tenthsOfMillimetre())).sum();
    return (int) Math.min(task.ends(), capacity);
  }

  private Map<Tally, Frontier> after(int index) {
    Map<Tally, Frontier> next = new LinkedHashMap<>();
    layers.get(index).forEach((before, from) -> {
      for (Move move : moves(index, before)) {
        next.computeIfAbsent(move.after(), tally -> Frontier.impossible(from.mostEnds())).raise(from, move);
      }
    });
    next.entrySet().removeIf(entry -> !entry.getValue().prune(task, aim.uncovered(), coverableYet(index + 1, entry.getKey())));
    return next;
  }

  /** All that can be done with a skein, and with its lot where it is the first of it. */
  private List<Move> moves(int index, Tally before) {
    Candidate skein = skeins.get(index);
    boolean forced = must.contains(skein);
    if (index > 0 && skeins.get(index - 1).lotOrOwn().equals(skein.lotOrOwn())) {
      return Move.of(skein, before, aim, task, forced);
    }
    return aim.uses(task).stream()
        .map(use -> aim.afterOpening(before, use))
        .filter(aim::admits)
        .flatMap(opened -> Move.of(skein, opened, aim, task, forced).stream())
        .toList();
  }

  /** No choice of the skeins from here on covers more than this: those that cover most, as many as may still be touched and opened. */
  private long coverableYet(int index, Tally tally) {
    List<Candidate> rest = skeins.subList(index, skeins.size());
    LongStream opened = coverable(rest, true);
    LongStream unopened = coverable(rest, false).limit((long) aim.unopened() - tally.unopened());
    return LongStream.concat(opened, unopened)
        .boxed()
        .sorted(Comparator.reverseOrder())
        .limit((long) aim.touched() - tally.touched())
        .mapToLong(Long::longValue)
        .sum();
  }

  private LongStream coverable(List<Candidate> rest, boolean opened) {
    return rest.stream()
        .filter(skein -> skein.opened() == opened)
        .map(skein -> task.coverable(skein.free().tenthsOfMillimetre()))
        .sorted(Comparator.reverseOrder())
        .mapToLong(Long::longValue);
  }

  /** Whether some choice meets the aim. */
  boolean reaches() {
    return end().isPresent();
  }

  /** The least left uncovered by any choice within the aim; {@link Long#MAX_VALUE} where there is none. */
  long leastUncovered() {
    return end().map(end -> end.getValue().leastUncovered(task)).orElse(Long.MAX_VALUE);
  }

  private Optional<Map.Entry<Tally, Frontier>> end() {
    return layers.getLast().entrySet().stream()
        .filter(entry -> entry.getKey().kept() || aim.remnant() == 0)
        .min(Comparator.comparingLong(entry -> entry.getValue().leastUncovered(task)));
  }

  /** The uses of the skeins in a choice that meets the aim, followed back from its end. */
  List<Portion> portions() {
    Map.Entry<Tally, Frontier> end = end().orElseThrow(() -> new IllegalStateException("nothing reaches " + aim + ", wanted a choice that does"));
    List<Portion> portions = new ArrayList<>();
    Tally tally = end.getKey();
    int ends = end.getValue().best(task);
    long weft = end.getValue().weft(ends);
    for (int i = skeins.size() - 1; i >= 0; i--) {
      Step step = into(i, tally, ends, weft);
      if (step.move().touches()) {
        portions.add(new Portion(skeins.get(i), step.ends(), step.weft(), step.move().keeps()));
      }
      tally = step.before();
      ends -= step.ends();
      weft -= step.weft();
    }
    return portions;
  }

  private record Step(Tally before, Move move, int ends) {
    long weft() {
      return move.weftBeside(ends);
    }
  }

  /** A step that led to so many ends and so much weft after a skein. */
  private Step into(int index, Tally after, int ends, long weft) {
    for (Map.Entry<Tally, Frontier> entry : layers.get(index).entrySet()) {
      Frontier from = entry.getValue();
      for (Move move : moves(index, entry.getKey())) {
        for (int taken = 0; move.after().equals(after) && taken <= Math.min(move.most(), ends); taken++) {
          if (from.possible(ends - taken) && from.weft(ends - taken) + move.weftBeside(taken) == weft) {
            return new Step(entry.getKey(), move, taken);
          }
        }
      }
    }
    throw new IllegalStateException("no step leads to " + after + ", wanted one");
  }
}
