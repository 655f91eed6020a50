package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

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
   * The runs of a plan; its groups of ends lie as they are listed.
   *
   * @param yardage what the plan takes
   * @throws Unreadable if there are over 20,000 ends: a sheet for so many helps nobody
   */
  public static WarpRuns of(Plan plan, Yardage yardage) {
    if (yardage.width().ends() > MOST_ENDS) {
      throw new Unreadable(yardage.width().ends() + " ends", "a warp of at most " + MOST_ENDS + " ends to wind");
    }
    List<OrderEntry> order = plan.warp().order();
    List<Long> ends = WarpOrder.ends(order, yardage.width().ends());
    BigFraction oneThread = yardage.warp().total().exactTenths().multiply(plan.allowances().winding().growth());
    List<WoundRun> runs = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Length perEnd = Length.ofTenths(oneThread.multiply(order.get(i).strands()), RoundingMode.CEILING);
      lay(runs, new WoundEnd(order.get(i).yarn(), perEnd), Math.toIntExact(ends.get(i)));
    }
    return new WarpRuns(runs, spare(yardage, runs));
  }

  /** Lays ends beside those that lie already. */
  private static void lay(List<WoundRun> runs, WoundEnd kind, int ends) {
    if (ends == 0) {
      return;
    }
    boolean joins = !runs.isEmpty() && runs.getLast().kind().equals(kind);
    int before = joins ? runs.removeLast().ends() : 0;
    runs.add(new WoundRun(kind, before + ends));
  }

  /** What is needed of each kind beyond what lies in the order. */
  private static List<WoundRun> spare(Yardage yardage, List<WoundRun> runs) {
    Map<WoundEnd, Integer> over = new LinkedHashMap<>();
    yardage.needs().stream()
        .filter(need -> need.role() == Need.Role.WARP)
        .forEach(need -> over.merge(new WoundEnd(need.yarn(), need.perThread()), Math.toIntExact(need.threads()), Integer::sum));
    runs.forEach(run -> over.merge(run.kind(), -run.ends(), Integer::sum));
    return over.entrySet().stream().filter(kind -> kind.getValue() > 0).map(kind -> new WoundRun(kind.getKey(), kind.getValue())).toList();
  }
}
