package hankbook.allot;

import hankbook.plan.WoundEnd;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How many ends of each kind each skein gives, as the shares say. */
record SkeinEnds(Map<WoundEnd, Map<String, Integer>> ends) {
  static SkeinEnds of(List<Share> shares, List<Skein> stock) {
    Map<String, YarnColour> yarns = stock.stream().collect(Collectors.toMap(Skein::code, Skein::yarn));
    Map<WoundEnd, Map<String, Integer>> ends = new HashMap<>();
    for (Share share : shares) {
      YarnColour yarn = yarns.get(share.code());
      if (yarn != null) {
        for (EndsGiven given : share.kinds()) {
          WoundEnd kind = new WoundEnd(yarn, given.each(), given.kind());
          ends.computeIfAbsent(kind, none -> new LinkedHashMap<>()).merge(share.code(), given.ends(), Integer::sum);
        }
      }
    }
    return new SkeinEnds(ends);
  }

  Map<String, Integer> of(WoundEnd kind) {
    return ends.getOrDefault(kind, Map.of());
  }
}
