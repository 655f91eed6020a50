package hankbook.reckon;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Squares the book of a plan whose cloth was cut off: says of all that was drawn for it where it went, so that its loom comes out empty and nothing stays
 * reserved for it.
 *
 * @param plan its name
 * @param skeins that the plan has on its loom or reserved, and every other of which it is said what is left
 * @param found all that is still wound on each skein of which it is said, by code; each at least zero
 * @param thrums loom waste and trimmings
 * @param samples yarn used up in samples
 * @param warp how much of each yarn the plan winds into its warp
 */
public record Squaring(
    String plan, List<DrawnSkein> skeins, Map<String, Length> found, List<Bundle> thrums, List<Bundle> samples, Map<YarnColour, Length> warp) {
  public Squaring {
    skeins = skeins.stream().sorted(Comparator.comparing(DrawnSkein::code)).toList();
    found = Map.copyOf(found);
    thrums = List.copyOf(thrums);
    samples = List.copyOf(samples);
    warp = Map.copyOf(warp);
  }

  /** How the loom comes out empty, or why it cannot. */
  public SquaringOutcome outcome() {
    try {
      refuseWhatWasNeverDrawn();
      refuseWhatIsNotSaid();
      return new Squared(plan, split(skeins.stream().map(this::use).toList()));
    } catch (Refusing refusing) {
      return refusing.why();
    }
  }

  private void refuseWhatWasNeverDrawn() {
    if (skeins.stream().noneMatch(skein -> skein.onLoom().isPositive())) {
      throw new Refusing(new Unsquared.NothingDrawn(plan));
    }
    Set<YarnColour> yarns = skeins.stream().filter(DrawnSkein::isOfThePlan).map(DrawnSkein::yarn).collect(Collectors.toSet());
    Set<String> known = skeins.stream().filter(skein -> yarns.contains(skein.yarn())).map(DrawnSkein::code).collect(Collectors.toSet());
    found.keySet().stream().sorted().filter(code -> !known.contains(code)).findFirst().ifPresent(code -> {
      throw new Refusing(new Unsquared.NeverDrawn(plan, code));
    });
  }

  private void refuseWhatIsNotSaid() {
    List<String> unsaid = skeins.stream().filter(skein -> skein.onLoom().isPositive()).map(DrawnSkein::code).filter(code -> !found.containsKey(code)).toList();
    if (!unsaid.isEmpty()) {
      throw new Refusing(new Unsquared.NotSaid(unsaid));
    }
  }

  private SkeinUse use(DrawnSkein skein) {
    Length left = found.get(skein.code());
    if (left == null) {
      return SkeinUse.untouched(skein);
    }
    if (left.compareTo(Skein.LONGEST) > 0) {
      throw new Refusing(new Unsquared.NoSuchSkein(skein.code(), left));
    }
    SkeinUse use = SkeinUse.of(skein, left);
    if (use.drawnMore().compareTo(skein.spare()) > 0) {
      throw new Refusing(new Unsquared.PromisedElsewhere(skein.code(), left, skein.promised()));
    }
    return use;
  }

  /** Says of what was used how much is in the samples and how much in the thrums, skein by skein as each gave. */
  private List<SkeinUse> split(List<SkeinUse> uses) {
    Map<YarnColour, List<SkeinUse>> byYarn = uses.stream().collect(Collectors.groupingBy(use -> use.skein().yarn(), TreeMap::new, Collectors.toList()));
    refuseWhatWasNotUsed(byYarn);
    BundleLengths lengths = new BundleLengths(plan, grists(byYarn), warpUsed(byYarn));
    Map<YarnColour, Length> sampled = lengths.of(samples);
    Map<YarnColour, Length> wasted = lengths.of(thrums);
    refuseMoreThanUsed(byYarn, sampled, wasted);
    Map<String, SkeinUse> told = new LinkedHashMap<>();
    byYarn.forEach((yarn, ofYarn) -> {
      split(ofYarn, sampled.getOrDefault(yarn, Length.ZERO), wasted.getOrDefault(yarn, Length.ZERO)).forEach(use -> told.put(use.skein().code(), use));
    });
    return uses.stream().map(use -> told.getOrDefault(use.skein().code(), use)).toList();
  }

  private void refuseWhatWasNotUsed(Map<YarnColour, List<SkeinUse>> byYarn) {
    Stream.concat(samples.stream(), thrums.stream())
        .flatMap(bundle -> bundle.yarn().stream())
        .filter(yarn -> used(byYarn.getOrDefault(yarn, List.of())).isZero())
        .findFirst()
        .ifPresent(yarn -> {
          throw new Refusing(new Unsquared.NotUsed(yarn));
        });
  }

  /** The samples first; the thrums of what is left, so that no skein gives more than it gave. */
  private static List<SkeinUse> split(List<SkeinUse> uses, Length sampled, Length wasted) {
    Map<SkeinUse, Length> gave = new LinkedHashMap<>();
    uses.forEach(use -> gave.put(use, use.used()));
    Map<SkeinUse, Length> samples = sampled.isZero() ? Map.of() : BundleLengths.shared(sampled, gave);
    samples.forEach((use, length) -> gave.merge(use, length.negated(), Length::plus));
    Map<SkeinUse, Length> thrums = wasted.isZero() ? Map.of() : BundleLengths.shared(wasted, gave);
    return uses.stream().map(use -> use.withSampled(samples.getOrDefault(use, Length.ZERO)).withThrums(thrums.getOrDefault(use, Length.ZERO))).toList();
  }

  private static void refuseMoreThanUsed(Map<YarnColour, List<SkeinUse>> byYarn, Map<YarnColour, Length> sampled, Map<YarnColour, Length> wasted) {
    Set<YarnColour> bundled = new HashSet<>(sampled.keySet());
    bundled.addAll(wasted.keySet());
    for (YarnColour yarn : bundled.stream().sorted().toList()) {
      Length bundles = sampled.getOrDefault(yarn, Length.ZERO).plus(wasted.getOrDefault(yarn, Length.ZERO));
      Length used = used(byYarn.getOrDefault(yarn, List.of()));
      if (bundles.compareTo(used) > 0) {
        throw new Refusing(new Unsquared.MoreThanUsed(yarn, bundles, used));
      }
    }
  }

  /** Of skeins of one yarn whose grists differ, that which most was used of tells the yarn's. */
  private static Map<YarnColour, Grist> grists(Map<YarnColour, List<SkeinUse>> byYarn) {
    Map<YarnColour, Grist> grists = new TreeMap<>();
    byYarn.forEach((yarn, uses) -> {
      List<SkeinUse> mostFirst = new ArrayList<>(uses);
      mostFirst.sort(Comparator.comparing(SkeinUse::used).reversed());
      mostFirst.stream().map(use -> use.skein().grist()).flatMap(Optional::stream).findFirst().ifPresent(grist -> grists.put(yarn, grist));
    });
    return grists;
  }

  private Map<YarnColour, Length> warpUsed(Map<YarnColour, List<SkeinUse>> byYarn) {
    Map<YarnColour, Length> ofIt = new TreeMap<>(warp);
    ofIt.keySet().removeIf(yarn -> !used(byYarn.getOrDefault(yarn, List.of())).isPositive());
    ofIt.values().removeIf(length -> !length.isPositive());
    return ofIt;
  }

  private static Length used(List<SkeinUse> uses) {
    return uses.stream().map(SkeinUse::used).reduce(Length.ZERO, Length::plus);
  }
}
