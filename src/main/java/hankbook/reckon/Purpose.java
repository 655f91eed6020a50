package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.plan.Making;
import hankbook.plan.Need;
import hankbook.plan.WarpLength;
import hankbook.plan.WarpPart;
import hankbook.yarn.YarnColour;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** What a plan gives a yarn to: the parts of its warp's length, end by end, and what comes beside them. */
public enum Purpose {
  CLOTH(WarpPart.CLOTH, "cloth"),
  HEMS(WarpPart.HEMS, "hems"),
  SHRINKAGE(WarpPart.SHRINKAGE, "shrinkage"),
  TAKE_UP(WarpPart.TAKE_UP, "take-up"),
  FRINGE(WarpPart.FRINGE, "fringe"),
  GAPS(WarpPart.GAPS, "gaps"),
  SAMPLING(WarpPart.SAMPLING, "sampling"),
  LOOM_WASTE(WarpPart.LOOM_WASTE, "loom waste"),
  ROUNDING(WarpPart.ROUNDING, "rounding"),
  REPAIRS("repairs", "repair ends"),
  WINDING("winding", "winding"),
  WEFT("weft", "weft");

  private final String key;
  private final String words;

  Purpose(WarpPart part, String words) {
    this(part.key(), words);
  }

  Purpose(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Its name in files. */
  public String key() {
    return key;
  }

  /** What it is called. */
  public String words() {
    return words;
  }

  /** What a plan gives one yarn to; all purposes, and they sum to what it needs of the yarn. */
  static Map<Purpose, Length> of(YarnColour yarn, Making making, WarpLength warp) {
    long mended = making.strands().getOrDefault(yarn, 0L);
    long strands = making.withRepairs(0).strands().getOrDefault(yarn, 0L);
    Map<Purpose, Length> purposes = new EnumMap<>(Purpose.class);
    for (WarpPart part : WarpPart.values()) {
      purposes.put(valueOf(part.name()), Objects.requireNonNull(warp.parts().get(part)).times(strands));
    }
    purposes.put(REPAIRS, warp.total().times(mended - strands));
    purposes.put(WINDING, needed(yarn, Need.Role.WARP, making).minus(warp.total().times(mended)));
    purposes.put(WEFT, needed(yarn, Need.Role.WEFT, making));
    return purposes;
  }

  private static Length needed(YarnColour yarn, Need.Role role, Making making) {
    return making.needs().stream().filter(need -> need.role() == role && need.yarn().equals(yarn)).map(Need::length).reduce(Length.ZERO, Length::plus);
  }
}
