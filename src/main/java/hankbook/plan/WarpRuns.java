package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The ends of a warp as they lie from edge to edge, and the spare ends that are wound beside it.
 *
 * @param warp the runs in the order of the warp; two neighbours are of different kinds
 * @param spare repair ends, which are no part of the order
 */
public record WarpRuns(List<WoundRun> warp, List<WoundRun> spare) {
  private static final int MOST_ENDS = 20_000;

  public WarpRuns {
    warp = List.copyOf(warp);
    spare = List.copyOf(spare);
  }

  /**
   * The runs of a plan: as its order is written, else group after group as they are listed, between its selvedges.
   *
   * @param yardage what the plan takes
   * @throws Unreadable if there are over 20,000 ends: a sheet for so many helps nobody
   */
  public static WarpRuns of(Plan plan, Yardage yardage) {
    int ends = yardage.width().ends();
    if (ends > MOST_ENDS) {
      throw new Unreadable(ends + " ends", Phrase.of("a warp of at most {0} ends to wind", MOST_ENDS));
    }
    Map<String, WoundEnd> kinds = WoundEnds.byMark(plan, yardage);
    List<WoundRun> runs = new ArrayList<>();
    WoundEnd selvedge = WoundEnds.selvedge(plan, yardage);
    for (Run run : WarpBand.of(plan.warp(), ends).runs(ends)) {
      lay(runs, kinds.getOrDefault(run.mark(), selvedge), Math.toIntExact(run.count()));
    }
    return new WarpRuns(runs, spare(yardage, runs));
  }

  /** Lays ends beside those that lie already. */
  private static void lay(List<WoundRun> runs, WoundEnd kind, int ends) {
    boolean joins = !runs.isEmpty() && runs.getLast().kind().equals(kind);
    int before = joins ? runs.removeLast().ends() : 0;
    runs.add(new WoundRun(kind, before + ends));
  }

  /** What is needed of each kind beyond what lies in the order. */
  private static List<WoundRun> spare(Yardage yardage, List<WoundRun> runs) {
    Map<WoundEnd, Integer> over = new LinkedHashMap<>();
    WoundEnds.all(yardage).forEach((kind, need) -> over.put(kind, Math.toIntExact(need.threads())));
    runs.forEach(run -> over.merge(run.kind(), -run.ends(), Integer::sum));
    return over.entrySet().stream().filter(kind -> kind.getValue() > 0).map(kind -> new WoundRun(kind.getKey(), kind.getValue())).toList();
  }
}
