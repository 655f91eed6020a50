package hankbook.studio;

import hankbook.exchange.WeaveColour;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeaveOrder;
import hankbook.exchange.WeaveThreads;
import hankbook.exchange.WeaveUse;
import hankbook.plan.Need.Role;
import hankbook.plan.Succession;
import hankbook.yarn.NearestYarn;
import hankbook.yarn.ShelfColours;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A draft before it becomes a plan.
 *
 * @param draft as it was read
 * @param colours of warp and weft, in the order in which they come
 * @param warpOrder the ends in the marks of the colours; empty where it would be too long to be read
 * @param weftOrder one repeat of the picks, likewise
 */
public record DraftPreview(WeaveDraft draft, List<DraftColour> colours, Optional<Succession> warpOrder, Optional<Succession> weftOrder) {
  private static final int LETTERS = 26;

  public DraftPreview {
    colours = List.copyOf(colours);
  }

  /**
   * Holds a draft against a shelf.
   *
   * @param only yarns of this name come into question, where it is given
   */
  public static DraftPreview of(WeaveDraft draft, List<Skein> shelf, Optional<String> only) {
    Map<WeaveColour, Integer> ends = draft.warp().counts();
    Map<WeaveColour, Integer> picks = draft.weft().counts();
    Set<WeaveColour> all = new LinkedHashSet<>(ends.keySet());
    all.addAll(picks.keySet());
    ShelfColours yarns = new ShelfColours(shelf, only);
    Map<WeaveColour, String> marks = new HashMap<>();
    List<DraftColour> colours = new ArrayList<>();
    for (WeaveColour colour : all) {
      String mark = letters(colours.size());
      marks.put(colour, mark);
      List<NearestYarn> nearest = colour.hex().isEmpty() ? List.of() : yarns.nearest(colour.hex());
      colours.add(new DraftColour(mark, colour, ends.getOrDefault(colour, 0), picks.getOrDefault(colour, 0), nearest));
    }
    return new DraftPreview(draft, colours, order(draft.warp(), marks), order(draft.weft(), marks));
  }

  /** For what a yarn must be chosen: each colour of the warp, then each of the weft. */
  public List<WeaveUse> uses() {
    List<WeaveUse> uses = new ArrayList<>();
    colours.stream().filter(colour -> colour.ends() > 0).forEach(colour -> uses.add(new WeaveUse(Role.WARP, colour.colour())));
    colours.stream().filter(colour -> colour.picks() > 0).forEach(colour -> uses.add(new WeaveUse(Role.WEFT, colour.colour())));
    return uses;
  }

  /** The choice with the nearest yarn wherever none was chosen and one comes near at all. */
  public Map<WeaveUse, YarnColour> withNearest(Map<WeaveUse, YarnColour> chosen) {
    Map<WeaveUse, YarnColour> all = new HashMap<>(chosen);
    for (WeaveUse use : uses()) {
      colour(use).nearest().stream().findFirst().ifPresent(nearest -> all.putIfAbsent(use, nearest.yarn()));
    }
    return all;
  }

  /** The colour that a yarn is chosen for. */
  public DraftColour colour(WeaveUse use) {
    return colours.stream().filter(colour -> colour.colour().equals(use.colour())).findFirst().orElseThrow();
  }

  private static Optional<Succession> order(WeaveThreads threads, Map<WeaveColour, String> marks) {
    return WeaveOrder.of(threads, colour -> marks.getOrDefault(colour, ""));
  }

  /** A to Z, then AA, AB and so on. */
  private static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letters(index / LETTERS - 1) + last;
  }
}
