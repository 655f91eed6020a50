package hankbook.allot;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Tries every way to take every number of ends of every kind and every tenth of a millimetre from every skein, and keeps the best. */
final class NaiveAllotting {
  /** What an allotment is judged by, in order; the remnant negated so that less is better throughout. */
  record Score(long uncovered, boolean windsApart, int lots, int unopened, int touched, long lessRemnant, List<String> ages) implements Comparable<Score> {
    private static final Comparator<Score> ORDER =
        Comparator.comparingLong(Score::uncovered)
            .thenComparing(Score::windsApart)
            .thenComparingInt(Score::lots)
            .thenComparingInt(Score::unopened)
            .thenComparingInt(Score::touched)
            .thenComparingLong(Score::lessRemnant)
            .thenComparing(score -> String.join(" ", score.ages()));

    @Override
    public int compareTo(Score other) {
      return ORDER.compare(this, other);
    }
  }

  private record Taken(Candidate skein, List<Integer> ends, long weft) {
    String lot() {
      return skein.lot().isEmpty() ? "of " + skein.code() : "named " + skein.lot();
    }

    int allEnds() {
      return ends.stream().mapToInt(Integer::intValue).sum();
    }
  }

  private final List<Candidate> skeins;
  private final Demand demand;
  private final List<Taken> taken = new ArrayList<>();
  private Optional<Score> best = Optional.empty();

  private NaiveAllotting(List<Candidate> skeins, Demand demand) {
    this.skeins = skeins;
    this.demand = demand;
  }

  /**
   * The best score. Where none that covers as much winds so many threads together, every allotment that covers as much winds them apart
   * alike, whether or not some of its kinds would do.
   */
  static Score best(List<Candidate> skeins, Demand demand) {
    NaiveAllotting naive = new NaiveAllotting(skeins, demand);
    naive.tryFrom(0, demand.kinds().stream().map(EndKind::ends).toList(), demand.weft().tenthsOfMillimetre());
    return naive.best.orElseThrow();
  }

  static Score score(Allotment allotment, List<Candidate> skeins, Demand demand) {
    List<Taken> taken = new ArrayList<>();
    for (Share share : allotment.shares()) {
      Candidate skein = skeins.stream().filter(one -> one.code().equals(share.code())).findFirst().orElseThrow();
      List<Integer> ends = IntStream.range(0, demand.kinds().size()).mapToObj(share::ends).toList();
      taken.add(new Taken(skein, ends, share.weft().tenthsOfMillimetre()));
    }
    return score(taken, demand);
  }

  private void tryFrom(int index, List<Integer> endsLeft, long weftLeft) {
    if (index == skeins.size()) {
      if (lotsAreKept(taken, demand)) {
        Score score = score(taken, demand);
        best = best.filter(other -> other.compareTo(score) <= 0).or(() -> Optional.of(score));
      }
      return;
    }
    for (List<Integer> ends : waysToGive(skeins.get(index).free().tenthsOfMillimetre(), 0, endsLeft)) {
      tryWith(index, ends, endsLeft, weftLeft);
    }
  }

  private void tryWith(int index, List<Integer> ends, List<Integer> endsLeft, long weftLeft) {
    long rest = skeins.get(index).free().minus(warp(ends, demand)).tenthsOfMillimetre();
    long most = rest > demand.usefulRemnant().tenthsOfMillimetre() ? Math.min(rest, weftLeft) : 0;
    List<Integer> left = IntStream.range(0, ends.size()).mapToObj(kind -> endsLeft.get(kind) - ends.get(kind)).toList();
    for (long weft = 0; weft <= most; weft++) {
      Taken one = new Taken(skeins.get(index), ends, weft);
      boolean touched = one.allEnds() > 0 || weft > 0;
      if (touched) {
        taken.addLast(one);
      }
      tryFrom(index + 1, left, weftLeft - weft);
      if (touched) {
        taken.removeLast();
      }
    }
  }

  private List<List<Integer>> waysToGive(long free, int kind, List<Integer> endsLeft) {
    if (kind == endsLeft.size()) {
      return List.of(List.of());
    }
    List<List<Integer>> ways = new ArrayList<>();
    long each = demand.kinds().get(kind).each().tenthsOfMillimetre();
    for (int ends = 0; ends <= endsLeft.get(kind) && ends * each <= free; ends++) {
      for (List<Integer> others : waysToGive(free - ends * each, kind + 1, endsLeft)) {
        List<Integer> way = new ArrayList<>(others);
        way.addFirst(ends);
        ways.add(way);
      }
    }
    return ways;
  }

  static boolean lotsAreKept(Allotment allotment, List<Candidate> skeins, Demand demand) {
    List<Taken> taken = new ArrayList<>();
    for (Share share : allotment.shares()) {
      Candidate skein = skeins.stream().filter(one -> one.code().equals(share.code())).findFirst().orElseThrow();
      taken.add(new Taken(skein, IntStream.range(0, demand.kinds().size()).mapToObj(share::ends).toList(), share.weft().tenthsOfMillimetre()));
    }
    return lotsAreKept(taken, demand);
  }

  private static boolean lotsAreKept(List<Taken> taken, Demand demand) {
    boolean ends =
        IntStream.range(0, demand.kinds().size())
            .filter(kind -> demand.kinds().get(kind).oneLot())
            .allMatch(kind -> taken.stream().filter(one -> one.ends().get(kind) > 0).map(Taken::lot).distinct().count() <= 1);
    return ends && (!demand.weftInOneLot() || taken.stream().filter(one -> one.weft() > 0).map(Taken::lot).distinct().count() <= 1);
  }

  private static Length warp(List<Integer> ends, Demand demand) {
    return IntStream.range(0, ends.size()).mapToObj(kind -> demand.kinds().get(kind).each().times(ends.get(kind))).reduce(Length.ZERO, Length::plus);
  }

  private static Score score(List<Taken> taken, Demand demand) {
    Set<String> lots = new HashSet<>();
    long uncovered = warp(demand.kinds().stream().map(EndKind::ends).toList(), demand).plus(demand.weft()).tenthsOfMillimetre();
    long remnant = 0;
    int unopened = 0;
    for (Taken one : taken) {
      if (one.allEnds() > 0) {
        lots.add("warp " + one.lot());
      }
      if (one.weft() > 0) {
        lots.add("weft " + one.lot());
      }
      Length given = warp(one.ends(), demand).plus(new Length(one.weft()));
      uncovered -= given.tenthsOfMillimetre();
      remnant = Math.max(remnant, one.skein().free().minus(given).tenthsOfMillimetre());
      unopened += one.skein().opened() ? 0 : 1;
    }
    List<String> ages = taken.stream().map(one -> age(one.skein())).sorted().toList();
    return new Score(uncovered, windsApart(taken, demand), lots.size(), unopened, taken.size(), -remnant, ages);
  }

  private static boolean windsApart(List<Taken> taken, Demand demand) {
    return IntStream.range(0, demand.kinds().size())
        .anyMatch(kind -> taken.stream().anyMatch(one -> one.ends().get(kind) > Math.ceilDiv(demand.kinds().get(kind).ends(), demand.threads())));
  }

  private static String age(Candidate skein) {
    return (skein.received().equals(LocalDate.MIN) ? "unknown" : skein.received()) + skein.code();
  }
}
