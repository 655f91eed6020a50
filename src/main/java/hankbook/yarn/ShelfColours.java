package hankbook.yarn;

import hankbook.measure.Length;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The colours of a shelf, to find what comes near one that is wanted. Skeins whose colour is not known are left out. */
public final class ShelfColours {
  private final Set<Swatch> swatches = new LinkedHashSet<>();
  private final Map<YarnColour, Length> held = new LinkedHashMap<>();

  private record Swatch(YarnColour yarn, String hex, Colour colour) {}

  /**
   * Those of the skeins on a shelf.
   *
   * @param only yarns of this name whatever its case, where it is given
   */
  public ShelfColours(List<Skein> shelf, Optional<String> only) {
    for (Skein skein : shelf) {
      if (!skein.hex().isEmpty() && only.filter(name -> !name.equalsIgnoreCase(skein.yarn().yarn())).isEmpty()) {
        swatches.add(new Swatch(skein.yarn(), skein.hex(), Colour.ofHex(skein.hex())));
        held.merge(skein.yarn(), skein.holds(), Length::plus);
      }
    }
  }

  /**
   * The yarns that come nearest, the nearest first. Of one that was entered with several swatches the nearest counts.
   *
   * @param hex the colour wanted, as {@code #rrggbb}
   */
  public List<NearestYarn> nearest(String hex) {
    Colour wanted = Colour.ofHex(hex);
    Set<YarnColour> seen = new HashSet<>();
    return swatches.stream()
        .map(swatch -> new NearestYarn(swatch.yarn, swatch.hex, swatch.colour.differenceTo(wanted), held.getOrDefault(swatch.yarn, Length.ZERO)))
        .sorted(Comparator.comparing(NearestYarn::difference).thenComparing(NearestYarn::yarn))
        .filter(near -> seen.add(near.yarn()))
        .toList();
  }
}
