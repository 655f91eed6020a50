package hankbook.allot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Assigns skeins to the threads held together so that no skein feeds two of them in one pass and each gives all of its ends, changing skeins
 * as seldom as a look one pass ahead can. It can be done exactly when, for every m, the m skeins that give most give no more together than the
 * passes can take from m skeins: Σ min(threads held, m) over the passes (the theorem of Gale and Ryser). Held true after each pass, it is
 * never lost.
 */
final class Feeding {
  private final int[] held;
  private final int[] number;
  private final List<String> codes;
  private final long[] left;
  /** For each m, what the passes still to come can take from m skeins. */
  private final long[] room;
  /** The skein at each position, or -1. */
  private final int[] at;
  private final Stint[] running;
  private final List<Stint> stints = new ArrayList<>();

  private Feeding(int[] held, int[] number, Map<String, Integer> ends) {
    this.held = held;
    this.number = number;
    codes = List.copyOf(ends.keySet());
    left = codes.stream().mapToLong(ends::get).toArray();
    int threads = Arrays.stream(held).max().orElse(0);
    room = new long[threads + 1];
    for (int m = 0; m <= threads; m++) {
      int skeins = m;
      room[m] = Arrays.stream(held).mapToLong(threadsHeld -> Math.min(threadsHeld, skeins)).sum();
    }
    at = new int[threads];
    Arrays.fill(at, -1);
    running = new Stint[threads];
  }

  /**
   * The stints, by position and pass; empty where it cannot be done.
   *
   * @param held threads held in each pass, at least 1
   * @param number of each pass, counted over the whole warp
   * @param ends that each skein gives; their sum is that of the threads held
   */
  static Optional<List<Stint>> of(int[] held, int[] number, Map<String, Integer> ends) {
    Feeding feeding = new Feeding(held, number, ends);
    return feeding.canBeDone() ? Optional.of(feeding.stints()) : Optional.empty();
  }

  private boolean canBeDone() {
    long[] most = left.clone();
    Arrays.sort(most);
    long sum = 0;
    for (int m = 1; m <= most.length; m++) {
      sum += most[most.length - m];
      if (sum > room[Math.min(m, room.length - 1)]) {
        return false;
      }
    }
    return sum == room[room.length - 1];
  }

  private List<Stint> stints() {
    for (int pass = 0; pass < held.length; pass++) {
      for (int m = 1; m < room.length; m++) {
        room[m] -= Math.min(held[pass], m);
      }
      lay(number[pass], chosen(held[pass]));
    }
    Arrays.stream(running).filter(stint -> stint != null).forEach(stints::add);
    return stints.stream().sorted(Comparator.comparingInt(Stint::position).thenComparingInt(Stint::firstPass)).toList();
  }

  /** The skeins for a pass: those in place where that is possible, else those with most left, of which those in place are kept. */
  private Set<Integer> chosen(int threads) {
    List<Integer> inPlace = Arrays.stream(at).filter(skein -> skein >= 0 && left[skein] > 0).limit(threads).boxed().toList();
    Set<Integer> stay = new HashSet<>(inPlace);
    if (stay.size() == threads && canBeDoneAfter(stay)) {
      return stay;
    }
    Set<Integer> chosen = new HashSet<>(byMostLeft().subList(0, threads));
    for (int wanted : Arrays.stream(at).filter(skein -> skein >= 0 && left[skein] > 0).toArray()) {
      keep(wanted, chosen);
    }
    return chosen;
  }

  private List<Integer> byMostLeft() {
    List<Integer> skeins = new ArrayList<>();
    for (int i = 0; i < left.length; i++) {
      skeins.add(i);
    }
    skeins.sort(Comparator.comparingLong((Integer skein) -> left[skein]).reversed());
    return skeins;
  }

  /** Puts a skein that is in place into the choice for one that is not, where that can still be done. */
  private void keep(int wanted, Set<Integer> chosen) {
    if (chosen.contains(wanted)) {
      return;
    }
    for (int other : List.copyOf(chosen)) {
      if (Arrays.stream(at).noneMatch(skein -> skein == other)) {
        chosen.remove(other);
        chosen.add(wanted);
        if (canBeDoneAfter(chosen)) {
          return;
        }
        chosen.remove(wanted);
        chosen.add(other);
      }
    }
  }

  private boolean canBeDoneAfter(Set<Integer> chosen) {
    chosen.forEach(skein -> left[skein]--);
    boolean can = canBeDone();
    chosen.forEach(skein -> left[skein]++);
    return can;
  }

  private void lay(int pass, Set<Integer> chosen) {
    Set<Integer> toPlace = new HashSet<>(chosen);
    for (int position = 0; position < at.length; position++) {
      if (toPlace.remove(at[position])) {
        feed(position, pass);
      }
    }
    for (int skein : toPlace.stream().sorted().toList()) {
      int position = placeFor(chosen);
      if (running[position] != null) {
        stints.add(running[position]);
      }
      at[position] = skein;
      running[position] = new Stint(position + 1, codes.get(skein), pass, pass, 0);
      feed(position, pass);
    }
  }

  private void feed(int position, int pass) {
    Stint stint = running[position];
    running[position] = new Stint(stint.position(), stint.skein(), stint.firstPass(), pass, stint.ends() + 1);
    left[at[position]]--;
  }

  /** An empty place, else one whose skein has given out, else one whose skein rests in this pass. */
  private int placeFor(Set<Integer> chosen) {
    int resting = -1;
    for (int position = 0; position < at.length; position++) {
      if (at[position] < 0 || (left[at[position]] == 0 && !chosen.contains(at[position]))) {
        return position;
      }
      resting = resting < 0 && !chosen.contains(at[position]) ? position : resting;
    }
    return resting;
  }
}
