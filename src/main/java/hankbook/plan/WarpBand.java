package hankbook.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The ends of a warp from left to right. */
final class WarpBand {
  private static final String GROUP = "group ";

  private WarpBand() {}

  static Band of(Warp warp, int total) {
    List<Long> ends = WarpOrder.ends(warp, total);
    Map<String, ClothThread> threads = new HashMap<>();
    List<SuccessionPart> parts = new ArrayList<>(warp.succession().map(Succession::parts).orElseGet(() -> groups(ends)));
    for (int i = 0; i < warp.order().size(); i++) {
      OrderEntry entry = warp.order().get(i);
      threads.put(mark(warp, i), new ClothThread(entry.yarn(), entry.strands()));
    }
    warp.selvedge().ifPresent(selvedge -> edge(parts, threads, warp.selvedgeEnds(), new ClothThread(selvedge.yarn(), selvedge.strands())));
    return new Band(new Succession(parts), threads, total);
  }

  /** One end more on the left where they are odd. */
  private static void edge(List<SuccessionPart> parts, Map<String, ClothThread> threads, int ends, ClothThread thread) {
    String mark = "selvedge";
    while (threads.containsKey(mark)) {
      mark += "'";
    }
    threads.put(mark, thread);
    parts.addFirst(new Run(ends - ends / 2, mark));
    if (ends > 1) {
      parts.addLast(new Run(ends / 2, mark));
    }
  }

  private static List<SuccessionPart> groups(List<Long> ends) {
    List<SuccessionPart> groups = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      if (ends.get(i) > 0) {
        groups.add(new Run(ends.get(i), group(i)));
      }
    }
    return groups;
  }

  /** The mark of one group of the order in the band. */
  static String mark(Warp warp, int group) {
    return warp.succession().isPresent() ? warp.order().get(group).mark() : group(group);
  }

  private static String group(int index) {
    return GROUP + index;
  }
}
