package hankbook.studio.shelf;

import hankbook.yarn.Colour;
import hankbook.yarn.ColourDifference;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.HueOrder;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** In which order groups of skeins stand. Those of which nobody told what is asked come last; what is equal stands by yarn and colour. */
public enum GroupOrder {
  /** By yarn, then by colour. */
  NAME,
  /** The most metres first. */
  HELD,
  /** Round the hues, greys last. */
  HUE,
  /** By kind of fibre, then by hue. */
  FIBRE,
  /** The nearest to a picked colour first (CIEDE2000). */
  NEARNESS;

  private static final Comparator<SkeinGroup> BY_NAME = Comparator.comparing(SkeinGroup::yarn);
  private static final Comparator<SkeinGroup> BY_HUE = lastWhere(SkeinGroup::colour, new HueOrder());

  /**
   * Groups in this order.
   *
   * @param picked the colour to be near to; without one, nearness is as good as hue
   */
  public List<SkeinGroup> sorted(List<SkeinGroup> groups, Optional<Colour> picked) {
    Comparator<SkeinGroup> order = switch (this) {
      case NAME -> BY_NAME;
      case HELD -> byHeld(groups);
      case HUE -> BY_HUE;
      case FIBRE -> lastWhere((SkeinGroup group) -> Optional.of(fibre(group)).filter(it -> !it.isEmpty()), Comparator.<String>naturalOrder()).thenComparing(BY_HUE);
      case NEARNESS -> picked.map(colour -> byNearness(groups, colour)).orElse(BY_HUE);
    };
    return groups.stream().sorted(order.thenComparing(BY_NAME)).toList();
  }

  /** Summed once, not at each comparison. */
  private static Comparator<SkeinGroup> byHeld(List<SkeinGroup> groups) {
    Map<SkeinGroup, Long> held = new HashMap<>();
    groups.forEach(group -> held.put(group, -group.held().tenthsOfMillimetre()));
    return Comparator.comparing(group -> held.getOrDefault(group, 0L));
  }

  private static Comparator<SkeinGroup> byNearness(List<SkeinGroup> groups, Colour picked) {
    Map<SkeinGroup, ColourDifference> apart = new HashMap<>();
    groups.forEach(group -> apart(group, picked).ifPresent(it -> apart.put(group, it)));
    return lastWhere(group -> Optional.ofNullable(apart.get(group)), Comparator.<ColourDifference>naturalOrder());
  }

  /** How far a group's yarn looks from a colour: the nearest of its skeins counts. */
  public static Optional<ColourDifference> apart(SkeinGroup group, Colour picked) {
    return group.skeins().stream().flatMap(skein -> skein.colour().stream()).map(picked::differenceTo).min(Comparator.naturalOrder());
  }

  /** The kinds of fibre before the fibre, so that all of wool stands together. */
  private static String fibre(SkeinGroup group) {
    String kinds = FibreFamily.of(group.fibre()).stream().map(Enum::ordinal).map(String::valueOf).collect(Collectors.joining());
    return group.fibre().isEmpty() ? "" : (kinds.isEmpty() ? "~" : kinds) + " " + Folded.of(group.fibre());
  }

  private static <T> Comparator<SkeinGroup> lastWhere(Function<SkeinGroup, Optional<T>> of, Comparator<? super T> order) {
    return Comparator.comparing((SkeinGroup group) -> of.apply(group).isEmpty())
        .thenComparing((one, other) -> of.apply(one).flatMap(first -> of.apply(other).map(second -> order.compare(first, second))).orElse(0));
  }
}
