package hankbook.exchange;

import hankbook.measure.Sett;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The ends or the picks of a draft.
 *
 * @param colours of each thread, in the draft's order; the picks are one repeat of the treadling
 * @param sett that the draft's spacing comes to, where it says any
 */
public record WeaveThreads(List<WeaveColour> colours, Optional<Sett> sett) {
  public WeaveThreads {
    colours = List.copyOf(colours);
  }

  /** How many threads there are. */
  public int count() {
    return colours.size();
  }

  /** How many threads there are of each colour, the colours in the order in which they come. */
  public Map<WeaveColour, Integer> counts() {
    Map<WeaveColour, Integer> counts = new LinkedHashMap<>();
    colours.forEach(colour -> counts.merge(colour, 1, Integer::sum));
    return Collections.unmodifiableMap(counts);
  }
}
