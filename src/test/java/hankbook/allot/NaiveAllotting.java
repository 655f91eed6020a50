package hankbook.allot;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Tries every way to take every number of ends and every tenth of a millimetre from every skein, and keeps the best. */
final class NaiveAllotting {
  /** What an allotment is judged by, in order; the remnant negated so that less is better throughout. */
  record Score(long uncovered, int lots, int unopened, int touched, long lessRemnant, List<String> ages) implements Comparable<Score> {
    private static final Comparator<Score> ORDER =
        Comparator.comparingLong(Score::uncovered)
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

  private record Taken(Candidate skein, int ends, long weft) {}

  private final List<Candidate> skeins;
  private final Demand demand;
  private final List<Taken> taken = new ArrayList<>();
  private final List<Score> best = new ArrayList<>();

  private NaiveAllotting(List<Candidate> skeins, Demand demand) {
    this.skeins = skeins;
    this.demand = demand;
  }

  static Score best(List<Candidate> skeins, Demand demand) {
    NaiveAllotting naive = new NaiveAllotting(skeins, demand);
    naive.tryFrom(0, demand.ends(), demand.weft().tenthsOfMillimetre());
    return naive.best.getFirst();
  }

  static Score score(Allotment allotment, List<Candidate> skeins, Demand demand) {
    List<Taken> taken = new ArrayList<>();
    for (Share share : allotment.shares()) {
      Candidate skein = skeins.stream().filter(one -> one.code().equals(share.code())).findFirst().orElseThrow();
      taken.add(new Taken(skein, share.ends(), share.weft().tenthsOfMillimetre()));
    }
    return score(taken, demand);
  }

  private void tryFrom(int index, int endsLeft, long weftLeft) {
    if (index == skeins.size()) {
      keep(score(taken, demand));
      return;
    }
    long free = skeins.get(index).free().tenthsOfMillimetre();
    long perEnd = demand.perEnd().tenthsOfMillimetre();
    for (int ends = 0; ends <= endsLeft && ends * perEnd <= free; ends++) {
      long rest = free - ends * perEnd;
      long most = rest > demand.usefulRemnant().tenthsOfMillimetre() ? Math.min(rest, weftLeft) : 0;
      for (long weft = 0; weft <= most; weft++) {
        boolean touched = ends > 0 || weft > 0;
        if (touched) {
          taken.addLast(new Taken(skeins.get(index), ends, weft));
        }
        tryFrom(index + 1, endsLeft - ends, weftLeft - weft);
        if (touched) {
          taken.removeLast();
        }
      }
    }
  }

  private void keep(Score score) {
    if (best.isEmpty() || score.compareTo(best.getFirst()) < 0) {
      best.clear();
      best.add(score);
    }
  }

  private static Score score(List<Taken> taken, Demand demand) {
    Set<String> lots = new HashSet<>();
    long uncovered = demand.perEnd().times(demand.ends()).plus(demand.weft()).tenthsOfMillimetre();
    long remnant = 0;
    int unopened = 0;
    for (Taken one : taken) {
      String lot = one.skein().lot().isEmpty() ? "of " + one.skein().code() : "named " + one.skein().lot();
      if (one.ends() > 0) {
        lots.add("warp " + lot);
      }
      if (one.weft() > 0) {
        lots.add("weft " + lot);
      }
      Length given = demand.perEnd().times(one.ends()).plus(new Length(one.weft()));
      uncovered -= given.tenthsOfMillimetre();
      remnant = Math.max(remnant, one.skein().free().minus(given).tenthsOfMillimetre());
      unopened += one.skein().opened() ? 0 : 1;
    }
    List<String> ages = taken.stream().map(one -> age(one.skein())).sorted().toList();
    return new Score(uncovered, lots.size(), unopened, taken.size(), -remnant, ages);
  }

  private static String age(Candidate skein) {
    return (skein.received().equals(LocalDate.MIN) ? "unknown" : skein.received()) + skein.code();
  }
}
