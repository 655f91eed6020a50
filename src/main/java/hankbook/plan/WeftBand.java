package hankbook.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The picks of the ground of a cloth from the first. */
final class WeftBand {
  private WeftBand() {}

  /** The wefts of the ground: those in the written order, else the first that cross the whole reed. */
  static Optional<List<Weft>> ground(Plan plan) {
    Set<String> marks = plan.weftSuccession().map(Succession::marks).orElse(Set.of());
    return WeftOrder.passages(plan.wefts()).stream()
        .filter(passage -> marks.isEmpty() ? passage.getFirst().width().equals(BigFraction.ONE) : marks.contains(passage.getFirst().mark()))
        .findFirst();
  }

  static Optional<Band> of(Plan plan, WarpLength warp) {
    return ground(plan).map(wefts -> band(plan, wefts, WeftPicks.picksIn(wefts.getFirst(), Making.of(plan, Width.of(plan), warp)))).filter(band -> band.count() > 0);
  }

  /** Without a written order each weft is one stretch of its picks; where there are no picks, any of them stands for none. */
  private static Band band(Plan plan, List<Weft> wefts, long picks) {
    List<Long> each = WeftOrder.picks(plan.weftSuccession(), wefts, picks);
    Map<String, ClothThread> threads = new HashMap<>();
    List<SuccessionPart> stretches = new ArrayList<>();
    for (int i = 0; i < wefts.size(); i++) {
      Weft weft = wefts.get(i);
      String mark = plan.weftSuccession().isPresent() ? weft.mark() : "weft " + i;
      threads.put(mark, new ClothThread(weft.yarn(), weft.strands()));
      if (each.get(i) > 0) {
        stretches.add(new Run(each.get(i), mark));
      }
    }
    if (stretches.isEmpty()) {
      stretches.add(new Run(1, threads.keySet().iterator().next()));
    }
    return new Band(plan.weftSuccession().orElseGet(() -> new Succession(stretches)), threads, picks);
  }
}
