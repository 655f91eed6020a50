package hankbook.exchange;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads what a weaving file asks of the loom: threading, tie-up, and treadling or lift plan. */
final class WeavingShafts {
  private static final String WEAVING = "weaving";
  private static final String LIFT_PLAN = "liftplan";
  private static final int MOST = 1000;
  private static final String SHAFT = "a shaft";
  private static final String TREADLE = "a treadle";

  private final WeavingSections sections;
  private final WeavingFaults faults;
  private final int mostShafts;
  private final int mostTreadles;
  private int highestShaft;
  private int highestTreadle;

  private WeavingShafts(WeavingSections sections, WeavingFaults faults) {
    this.sections = sections;
    this.faults = faults;
    this.mostShafts = said("shafts").orElse(MOST);
    this.mostTreadles = said("treadles").orElse(MOST);
  }

  static WeaveShafts read(WeavingSections sections, WeavingThreads warp, WeavingThreads weft, WeavingFaults faults) {
    return new WeavingShafts(sections, faults).read(warp, weft);
  }

  private WeaveShafts read(WeavingThreads warp, WeavingThreads weft) {
    SortedMap<Integer, Integer> heddles = new TreeMap<>();
    BitSet threaded = new BitSet();
    warp.each("threading", this::shafts, (end, shafts) -> shafts.stream().distinct().filter(shaft -> shaft > 0).forEach(shaft -> {
      heddles.merge(shaft, 1, Integer::sum);
      threaded.set(end);
    }));
    weft.each("treadling", this::treadles, (_, _) -> {});
    weft.each(LIFT_PLAN, this::shafts, (_, _) -> {});
    for (WeavingLine line : sections.lines("tieup")) {
      faults.readKey(line, this::treadles);
      faults.read(line, this::shafts);
    }
    boolean rising = sections.line(WEAVING, "rising shed").flatMap(line -> faults.read(line, WeavingNumber::yes)).orElse(true);
    boolean liftPlan = sections.has(LIFT_PLAN) && !sections.has("treadling");
    return new WeaveShafts(said("shafts").orElse(highestShaft), said("treadles").orElse(highestTreadle), rising, liftPlan, warp.count() - threaded.cardinality(), heddles);
  }

  private Optional<Integer> said(String key) {
    return sections.line(WEAVING, key).flatMap(line -> faults.read(line, text -> WeavingNumber.whole(text, 0, MOST, "how many " + key + " there are,")));
  }

  private List<Integer> shafts(String text) {
    List<Integer> shafts = WeavingNumber.list(text, 0, mostShafts, SHAFT);
    highestShaft = shafts.stream().reduce(highestShaft, Math::max);
    return shafts;
  }

  private List<Integer> treadles(String text) {
    List<Integer> treadles = WeavingNumber.list(text, 0, mostTreadles, TREADLE);
    highestTreadle = treadles.stream().reduce(highestTreadle, Math::max);
    return treadles;
  }
}
