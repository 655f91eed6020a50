package hankbook.studio;

import hankbook.exchange.WeaveColour;
import hankbook.yarn.NearestYarn;
import java.util.List;

/**
 * A colour of a draft, and what of the shelf comes near it.
 *
 * @param mark a letter for it, in the draft's order
 * @param colour as the draft has it
 * @param ends in the warp
 * @param picks in one repeat of the weft
 * @param nearest yarns of the shelf, the nearest first; none where the draft does not show the colour
 */
public record DraftColour(String mark, WeaveColour colour, int ends, int picks, List<NearestYarn> nearest) {
  public DraftColour {
    nearest = List.copyOf(nearest);
  }
}
