package hankbook.allot;

import hankbook.measure.Length;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;

/** How much processor time the search takes on large shelves; run by hand, see DEVELOPERS.md. */
final class AllottingBenchmark {
  private static final int ROUNDS = 3;
  private static final Length USEFUL = Length.metres(5);

  private AllottingBenchmark() {}

  /** Runs the cases whose names hold the text given, or all. */
  public static void main(String[] arguments) {
    String wanted = arguments.length == 0 ? "" : arguments[0];
    Demand plain = demand(2000, new EndKind(600, Length.metres(8), false));
    Demand two = demand(2000, new EndKind(520, Length.parse("8.05 m"), false), new EndKind(40, Length.parse("16.1 m"), false));
    Demand stripes = demand(2000, new EndKind(400, Length.metres(8), false), new EndKind(120, Length.metres(8), true), new EndKind(40, Length.metres(16), true));
    time(wanted, "40 different skeins of two yarns, each of its lot", () -> twice(skeins(40, 40, 100, 900), plain));
    time(wanted, "40 different skeins of two yarns, 4 lots", () -> twice(skeins(40, 4, 100, 900), plain));
    time(wanted, "1,000 skeins, ample", () -> Allotting.best(skeins(1000, 30, 100, 900), plain));
    time(wanted, "1,000 skeins, ample, lots unknown", () -> Allotting.best(skeins(1000, 1000, 100, 900), plain));
    time(wanted, "1,000 skeins, ample, two kinds", () -> Allotting.best(skeins(1000, 30, 100, 900), two));
    time(wanted, "1,000 skeins, ample, two kinds, four threads", () -> Allotting.best(skeins(1000, 30, 100, 900), together(two, 4)));
    time(wanted, "1,000 skeins, ample, stripes in one lot", () -> Allotting.best(skeins(1000, 30, 100, 900), stripes));
    time(wanted, "1,000 remnants, ample", () -> Allotting.best(skeins(1000, 30, 10, 40), plain));
    List<Candidate> remnants = skeins(1000, 30, 10, 40);
    time(wanted, "1,000 remnants, just enough", () -> Allotting.best(remnants, justEnough(remnants, 0)));
    time(wanted, "1,000 remnants, just enough, two kinds", () -> Allotting.best(remnants, justEnough(remnants, 30)));
    time(wanted, "1,000 remnants, one end short", () -> Allotting.best(remnants, oneMore(justEnough(remnants, 0))));
    time(wanted, "1,000 remnants, far short", () -> Allotting.best(remnants, demand(20_000, new EndKind(2000, Length.metres(8), false))));
    time(wanted, "does it cover? just enough", () -> Allotting.covers(remnants, justEnough(remnants, 0)));
  }

  private static Demand demand(int weft, EndKind... kinds) {
    return new Demand(List.of(kinds), Length.metres(weft), false, USEFUL, 1);
  }

  private static Demand together(Demand demand, int threads) {
    return new Demand(demand.kinds(), demand.weft(), demand.weftInOneLot(), demand.usefulRemnant(), threads);
  }

  private static Allotment twice(List<Candidate> skeins, Demand demand) {
    Allotting.best(skeins, demand);
    return Allotting.best(skeins.reversed(), demand);
  }

  /** As many ends of 8 m beside 2 km of weft as the skeins give. */
  private static Demand justEnough(List<Candidate> skeins, int doubled) {
    int enough = 1;
    int tooMany = 5000;
    while (tooMany - enough > 1) {
      int middle = (enough + tooMany) / 2;
      if (Allotting.covers(skeins, demand(2000, new EndKind(middle, Length.metres(8), false), new EndKind(doubled, Length.metres(16), false)))) {
        enough = middle;
      } else {
        tooMany = middle;
      }
    }
    return demand(2000, new EndKind(enough, Length.metres(8), false), new EndKind(doubled, Length.metres(16), false));
  }

  private static Demand oneMore(Demand demand) {
    return demand(2000, new EndKind(demand.kinds().get(0).ends() + 1, Length.metres(8), false));
  }

  private static List<Candidate> skeins(int count, int lots, int shortest, int longest) {
    Random random = new Random(20261126);
    List<Candidate> skeins = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Length free = new Length(Length.metres(shortest).tenthsOfMillimetre() + random.nextLong(Length.metres(longest - shortest).tenthsOfMillimetre()));
      String lot = lots == count ? "" : "L" + random.nextInt(lots);
      skeins.add(new Candidate("S" + (1000 + i), lot, random.nextInt(5) == 0, free, LocalDate.of(2025, 1, 1).plusDays(random.nextInt(600))));
    }
    return skeins;
  }

  private static void time(String wanted, String what, Supplier<Object> work) {
    if (!what.contains(wanted)) {
      return;
    }
    double best = Double.MAX_VALUE;
    Object answer = "";
    for (int round = 0; round < ROUNDS; round++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      answer = work.get();
      best = Math.min(best, (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6);
    }
    String said = answer instanceof Allotment allotment ? allotment.shares().size() + " skeins" + (allotment.proven() ? "" : ", not proven") : answer.toString();
    System.out.printf("%-50s %9.1f ms  %s%n", what, best, said);
  }
}
