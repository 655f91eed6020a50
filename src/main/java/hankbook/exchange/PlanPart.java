package hankbook.exchange;

import java.util.List;
import java.util.Set;

/** The groups of fields that a plan file has, each with the path that leads to it and the keys it knows. */
public enum PlanPart {
  PLAN("", false, "name weftSuccession"),
  PIECES("pieces", true, "name count length width hems fringe"),
  WARP("warp", false, "sett ends length endsMultiple selvedgeEnds succession endsPerUnit extendLeft extendRight"),
  SELVEDGE("warp.selvedge", false, "yarn colour strands"),
  SECTIONS("warp.sections", true, "name repeats units"),
  ORDER("warp.order", true, "yarn colour mark ends share strands oneLot repairEnds"),
  WEFT("weft", true, "yarn colour mark picks share strands width length oneLot"),
  ALLOWANCES(
      "allowances", false, "warpTakeUp weftTakeUp drawIn lengthShrinkage widthShrinkage sampling loomWaste gap winding repairEnds roundUpTo"),
  WINDING("winding", false, "threads");

  private final String path;
  private final boolean list;
  private final String keys;

  PlanPart(String path, boolean list, String keys) {
    this.path = path;
    this.list = list;
    this.keys = keys;
  }

  /** The path from the root of the file; empty for the root itself. */
  public String path() {
    return path;
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

  /** The key under which the part stands in the object that holds it. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
