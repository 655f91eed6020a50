package hankbook.reckon;

import hankbook.gear.Weave;
import hankbook.measure.Phrase;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.YarnColour;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * How a cloth is made, as far as it is said; also a group of cloths, all those that are made so and otherwise anyhow.
 *
 * @param loom the loom's name
 * @param weave of the ground
 * @param fibre the families of the fibres of the yarn with most ends; empty where they are not known
 */
public record Manner(Optional<String> loom, Optional<Weave> weave, Set<FibreFamily> fibre) {
  /** Nothing said: every cloth. */
  public static final Manner ANY = new Manner(Optional.empty(), Optional.empty(), Set.of());

  public Manner {
    Set<FibreFamily> inOrder = EnumSet.noneOf(FibreFamily.class);
    inOrder.addAll(fibre);
    fibre = Collections.unmodifiableSet(inOrder);
  }

  /**
   * How a plan's cloth is to be made.
   *
   * @param fibreOf what a yarn is spun of, or an empty text
   * @throws hankbook.measure.Unreadable if the plan does not add up
   */
  public static Manner of(Plan plan, Function<YarnColour, String> fibreOf) {
    Map<String, Long> ends = new LinkedHashMap<>();
    List<Need> warp = Yardage.of(plan).needs().stream().filter(need -> need.role() == Need.Role.WARP).toList();
    warp.forEach(need -> ends.merge(need.yarn().yarn(), need.threads(), Long::sum));
    long most = Collections.max(ends.values());
    Set<FibreFamily> fibre = warp.stream().map(Need::yarn)
        .filter(yarn -> yarn.yarn().equals(ends.entrySet().stream().filter(of -> of.getValue() == most).findFirst().orElseThrow().getKey()))
        .map(yarn -> FibreFamily.of(fibreOf.apply(yarn)))
        .filter(families -> !families.isEmpty())
        .findFirst()
        .orElse(Set.of());
    return new Manner(plan.dressing().loom(), plan.dressing().weave(), fibre);
  }

  /** Whether it says this much. */
  public boolean says(Telling telling) {
    return switch (telling) {
      case LOOM -> loom.isPresent();
      case WEAVE -> weave.isPresent();
      case FIBRE -> !fibre.isEmpty();
    };
  }

  /** The same, saying no more than this. */
  public Manner only(Set<Telling> tellings) {
    return new Manner(
        loom.filter(_ -> tellings.contains(Telling.LOOM)), weave.filter(_ -> tellings.contains(Telling.WEAVE)), tellings.contains(Telling.FIBRE) ? fibre : Set.of());
  }

  /** Both together; what this one says wins. */
  public Manner and(Manner other) {
    return new Manner(loom.or(() -> other.loom), weave.or(() -> other.weave), fibre.isEmpty() ? other.fibre : fibre);
  }

  /** Whether a cloth made in some manner is of this group. */
  public boolean holds(Manner made) {
    return (loom.isEmpty() || loom.equals(made.loom)) && (weave.isEmpty() || weave.equals(made.weave)) && (fibre.isEmpty() || fibre.equals(made.fibre));
  }

  /** The fibres in words, such as {@code wool and silk}; empty where they are not known. */
  public String fibreWords() {
    return fibres().english();
  }

  /** The same, to be said in any language. */
  public Phrase fibres() {
    return Phrase.just(new Phrase.Listed(List.copyOf(fibre.stream().map(family -> new Phrase.Word(family.words())).toList()), " and "));
  }

  /** In words that can follow "plans": {@code in 2/2 twill of wool on Window loom}. */
  public String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    Object woven = weave.isPresent() ? weave.get() : "";
    Object on = loom.orElse("");
    if (weave.isEmpty()) {
      return fibre.isEmpty()
          ? loom.isEmpty() ? Phrase.of("of every kind") : Phrase.of("on {0}", on)
          : loom.isEmpty() ? Phrase.of("of {0}", fibres()) : Phrase.of("of {0} on {1}", fibres(), on);
    }
    return fibre.isEmpty()
        ? loom.isEmpty() ? Phrase.of("in {0}", woven) : Phrase.of("in {0} on {1}", woven, on)
        : loom.isEmpty() ? Phrase.of("in {0} of {1}", woven, fibres()) : Phrase.of("in {0} of {1} on {2}", woven, fibres(), on);
  }
}
