package hankbook.allot;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Chooses skeins for one yarn: every end whole, few dye lots, few unopened skeins broken into, few skeins touched, the earliest first.
 *
 * <p>For a warp the ends covered, the count of lots, and within the lots taken the unopened and then all touched skeins are the fewest
 * possible. Weft is served afterwards from what the warp left, so where warp and weft compete for the last metres the choice is sound
 * (it never takes what is not there) but not proved the best: it may call short what another choice of warp skeins would just cover.
 */
public final class Allotting {
  private static final Comparator<Candidate> EARLIEST = Comparator.comparing(Candidate::received).thenComparing(Candidate::code);

  private final Demand demand;
  private final Map<String, Integer> ends = new LinkedHashMap<>();
  private final Map<String, Length> weft = new LinkedHashMap<>();

  private Allotting(Demand demand) {
    this.demand = demand;
  }

  /** The allotment of these skeins to this demand. */
  public static Allotment best(List<Candidate> skeins, Demand demand) {
    Allotting allotting = new Allotting(demand);
    int endsLeft = allotting.warp(allotting.warpSkeins(skeins));
    Length weftLeft = allotting.weft(skeins);
    return new Allotment(allotting.shares(skeins), endsLeft, weftLeft);
  }

  /** The skeins of the fewest lots that hold the ends: one lot that does, or the richest lots together. */
  private List<Candidate> warpSkeins(List<Candidate> skeins) {
    Map<String, List<Candidate>> lots = new LinkedHashMap<>();
    skeins.stream()
        .filter(skein -> endsIn(skein) > 0)
        .sorted(EARLIEST)
        .forEach(skein -> lots.computeIfAbsent(skein.lotOrOwn(), none -> new ArrayList<>()).add(skein));
    List<List<Candidate>> enough = lots.values().stream().filter(lot -> endsIn(lot) >= demand.ends()).map(this::fewest).toList();
    if (!enough.isEmpty()) {
      Comparator<List<Candidate>> unopened = Comparator.comparingLong(lot -> lot.stream().filter(skein -> !skein.opened()).count());
      return enough.stream().min(unopened.thenComparingInt(List::size)).orElseThrow();
    }
    List<Candidate> pool = new ArrayList<>();
    lots.values().stream()
        .sorted(Comparator.comparingLong((List<Candidate> lot) -> endsIn(lot)).reversed())
        .forEach(
            lot -> {
              if (endsIn(pool) < demand.ends()) {
                pool.addAll(lot);
              }
            });
    return fewest(pool);
  }

  /** The fewest unopened skeins that do with every opened one, and then the fewest opened ones beside them. */
  private List<Candidate> fewest(List<Candidate> pool) {
    Comparator<Candidate> richest = Comparator.comparingInt((Candidate skein) -> endsIn(skein)).reversed().thenComparing(EARLIEST);
    List<Candidate> opened = pool.stream().filter(Candidate::opened).sorted(richest).toList();
    List<Candidate> chosen = new ArrayList<>();
    long held = endsIn(opened);
    for (Candidate skein : pool.stream().filter(skein -> !skein.opened()).sorted(richest).toList()) {
      if (held < demand.ends()) {
        chosen.add(skein);
        held += endsIn(skein);
      }
    }
    for (Candidate skein : opened) {
      if (endsIn(chosen) < demand.ends()) {
        chosen.add(skein);
      }
    }
    return chosen;
  }

  private int warp(List<Candidate> chosen) {
    int left = demand.ends();
    for (Candidate skein : chosen) {
      int given = Math.min(left, endsIn(skein));
      if (given > 0) {
        ends.put(skein.code(), given);
        left -= given;
      }
    }
    return left;
  }

  private Length weft(List<Candidate> skeins) {
    Map<String, Length> rest = new HashMap<>();
    skeins.forEach(skein -> rest.put(skein.code(), skein.free().minus(demand.perEnd().times(ends.getOrDefault(skein.code(), 0)))));
    Comparator<Candidate> order =
        Comparator.comparing((Candidate skein) -> !ends.containsKey(skein.code()))
            .thenComparing(skein -> !skein.opened())
            .thenComparing(skein -> rest.getOrDefault(skein.code(), Length.ZERO), Comparator.reverseOrder())
            .thenComparing(EARLIEST);
    Length left = demand.weft();
    for (Candidate skein : skeins.stream().sorted(order).toList()) {
      Length there = rest.getOrDefault(skein.code(), Length.ZERO);
      if (left.isPositive() && there.compareTo(demand.usefulRemnant()) > 0) {
        Length given = Length.min(left, there);
        weft.put(skein.code(), given);
        left = left.minus(given);
      }
    }
    return left;
  }

  private List<Share> shares(List<Candidate> skeins) {
    List<Share> shares = new ArrayList<>();
    for (Candidate skein : skeins) {
      int given = ends.getOrDefault(skein.code(), 0);
      Length woven = weft.getOrDefault(skein.code(), Length.ZERO);
      if (given > 0 || woven.isPositive()) {
        shares.add(new Share(skein.code(), given, demand.perEnd().times(given), woven, reason(skein, given, woven)));
      }
    }
    return shares;
  }

  private String reason(Candidate skein, int given, Length woven) {
    if (given > 0) {
      return "whole ends of " + skein.lotOrOwn() + (skein.opened() ? ", opened before" : "");
    }
    return (skein.opened() ? "opened before" : "most metres") + ", " + woven + " of its " + skein.free();
  }

  private int endsIn(Candidate skein) {
    return demand.endsIn(skein.free());
  }

  private long endsIn(List<Candidate> skeins) {
    return skeins.stream().mapToLong(this::endsIn).sum();
  }
}
