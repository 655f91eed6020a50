package hankbook.exchange;

import hankbook.plan.WorkKind;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The groups of fields that an actuals file has, each with the keys it knows. */
public enum ActualsPart {
  ACTUALS("", false, "plan date reason note"),
  LEFTOVERS("leftovers", true, "skein left gross tare regain turns reel usedUp"),
  THRUMS("thrums", true, "yarn colour length mass"),
  SAMPLES("samples", true, "yarn colour length mass"),
  WARP("warp", false, "length ends broken loomWaste sampling widthInReed"),
  CLOTH("cloth", false, "lengthOnLoom lengthOffLoom lengthFinished widthOnLoom widthOffLoom widthFinished picks pieces"),
  HOURS("hours", false, Arrays.stream(WorkKind.values()).map(WorkKind::key).collect(Collectors.joining(" ")));

  private final String key;
  private final boolean list;
  private final String keys;

  ActualsPart(String key, boolean list, String keys) {
    this.key = key;
    this.list = list;
    this.keys = keys;
  }

  /** The key under which it stands in the file; empty for the file itself. */
  public String key() {
    return key;
  }

  /** Whether the file has a list of these. */
  public boolean isList() {
    return list;
  }

  /** The keys that hold a text, in the order they are written. */
  public List<String> keys() {
    return List.of(keys.split(" "));
  }

  Set<String> known() {
    return Set.copyOf(keys());
  }
}
