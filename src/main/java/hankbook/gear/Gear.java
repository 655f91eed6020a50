package hankbook.gear;

import hankbook.measure.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The looms and reeds of a studio.
 *
 * @param looms by name
 * @param reeds by name
 * @param isKnown whether these are all there are; else nobody was asked, and a name says nothing
 */
public record Gear(List<Loom> looms, List<Reed> reeds, boolean isKnown) {
  /** Nobody was asked. */
  public static final Gear UNKNOWN = new Gear(List.of(), List.of(), false);

  public Gear {
    looms = List.copyOf(looms);
    reeds = List.copyOf(reeds);
  }

  /** All there are. */
  public Gear(List<Loom> looms, List<Reed> reeds) {
    this(looms, reeds, true);
  }

  /** The loom of a name. */
  public Optional<Loom> loom(String name) {
    return looms.stream().filter(loom -> loom.name().equals(name)).findFirst();
  }

  /** The widest loom, of those equally wide the one with most shafts. */
  public Optional<Loom> widestLoom() {
    return looms.stream().max(Comparator.comparing(Loom::width).thenComparingInt(Loom::shafts));
  }

  /** The widest reed whose width is known. */
  public Optional<Reed> widestReed() {
    return reeds.stream().filter(reed -> reed.width().isPresent()).max(Comparator.comparing(reed -> reed.width().orElseThrow()));
  }

  /** The reed of a name; else the narrowest of these dents that takes the warp, else the widest of these dents. */
  public Optional<Reed> reed(String nameOrDents, Length warp) {
    Optional<Reed> named = reeds.stream().filter(reed -> reed.name().equals(nameOrDents)).findFirst();
    return named.or(() -> Reed.outright(nameOrDents).flatMap(wanted -> alike(wanted, warp)));
  }

  private Optional<Reed> alike(Reed wanted, Length warp) {
    Comparator<Reed> narrowest = Comparator.comparing(reed -> reed.width().orElse(new Length(Long.MAX_VALUE)));
    List<Reed> alike = reeds.stream().filter(reed -> reed.dents().compareTo(wanted.dents()) == 0).sorted(narrowest).toList();
    return alike.stream().filter(reed -> reed.takes(warp)).findFirst().or(() -> alike.isEmpty() ? Optional.empty() : Optional.of(alike.getLast()));
  }
}
