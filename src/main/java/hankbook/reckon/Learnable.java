package hankbook.reckon;

import hankbook.plan.WorkKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a finished cloth can teach the next plan: an allowance, or how long a kind of work takes. By what its values differ most (loom, weave, fibre, the
 * most telling first) is common practice.
 */
@SuppressWarnings("ImmutableEnumChecker") // The list is a copy that cannot change.
public enum Learnable {
  WARP_TAKE_UP(Way.WARP_TAKE_UP, LearntUnit.OF_CLOTH, Telling.WEAVE, Telling.FIBRE),
  WEFT_TAKE_UP(Way.WEFT_TAKE_UP, LearntUnit.OF_CLOTH, Telling.WEAVE, Telling.FIBRE),
  DRAW_IN(Way.DRAW_IN, LearntUnit.PART, Telling.WEAVE, Telling.FIBRE),
  LENGTH_SHRINKAGE(Way.LENGTH_SHRINKAGE, LearntUnit.PART, Telling.FIBRE, Telling.WEAVE),
  WIDTH_SHRINKAGE(Way.WIDTH_SHRINKAGE, LearntUnit.PART, Telling.FIBRE, Telling.WEAVE),
  LOOM_WASTE("loomWaste", "loom waste", LearntUnit.LENGTH, Telling.LOOM),
  WINDING(Way.WINDING, LearntUnit.PART, Telling.FIBRE),
  WINDING_TIME(WorkKind.WINDING, Telling.FIBRE),
  BEAMING_TIME(WorkKind.BEAMING, Telling.LOOM),
  THREADING_TIME(WorkKind.THREADING, Telling.LOOM),
  SLEYING_TIME(WorkKind.SLEYING, Telling.LOOM),
  WEAVING_TIME(WorkKind.WEAVING, Telling.LOOM, Telling.WEAVE),
  FINISHING_TIME(WorkKind.FINISHING, Telling.FIBRE);

  private final String key;
  private final String words;
  private final LearntUnit unit;
  private final Optional<Way> way;
  private final Optional<WorkKind> work;
  private final List<Telling> tellings;

  Learnable(String key, String words, LearntUnit unit, Optional<Way> way, Optional<WorkKind> work, List<Telling> tellings) {
    this.key = key;
    this.words = words;
    this.unit = unit;
    this.way = way;
    this.work = work;
    this.tellings = tellings;
  }

  Learnable(Way way, LearntUnit unit, Telling... tellings) {
    this(way.key(), way.words(), unit, Optional.of(way), Optional.empty(), List.of(tellings));
  }

  Learnable(String key, String words, LearntUnit unit, Telling... tellings) {
    this(key, words, unit, Optional.empty(), Optional.empty(), List.of(tellings));
  }

  Learnable(WorkKind kind, Telling... tellings) {
    this(kind.key() + "Time", kind.key() + " time", LearntUnit.of(kind.per()), Optional.empty(), Optional.of(kind), List.of(tellings));
  }

  /** The allowance for one of the ways of cloth and loom. */
  public static Learnable of(Way way) {
    return Arrays.stream(values()).filter(which -> which.way.equals(Optional.of(way))).findFirst().orElseThrow();
  }

  /** The time of a kind of work. */
  public static Learnable time(WorkKind kind) {
    return Arrays.stream(values()).filter(which -> which.work.equals(Optional.of(kind))).findFirst().orElseThrow();
  }

  /** Its name in files; an allowance's is that of the plan's. */
  public String key() {
    return key;
  }

  /** What it is, as a noun. */
  public String words() {
    return words;
  }

  /** In what it is told. */
  public LearntUnit unit() {
    return unit;
  }

  /** The kind of work it is the time of; empty for an allowance. */
  public Optional<WorkKind> work() {
    return work;
  }

  /** By what it differs, the most telling first. */
  public List<Telling> tellings() {
    return tellings;
  }

  /** The groups that a cloth is of, as far as its manner says: the most telling first, every cloth last. */
  public List<Manner> groups(Manner manner) {
    List<Set<Telling>> sets = new ArrayList<>();
    if (tellings.size() > 1) {
      sets.add(EnumSet.copyOf(tellings));
    }
    tellings.forEach(telling -> sets.add(EnumSet.of(telling)));
    List<Manner> groups = new ArrayList<>(sets.stream().filter(set -> set.stream().allMatch(manner::says)).map(manner::only).toList());
    groups.add(Manner.ANY);
    return groups;
  }
}
