package hankbook.plan;

import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;

/**
 * How far the need of each yarn may turn out other than planned, cause by cause; independent of each other and of what is known of the skeins.
 *
 * @param parts standard uncertainties by yarn, the largest first; a yarn without is taken to need what is planned
 */
public record NeedSpread(Map<YarnColour, List<Uncertainty.Part>> parts) {
  /** Nothing is known of it. */
  public static final NeedSpread UNKNOWN = new NeedSpread(Map.of());

  public NeedSpread {
    parts = Map.copyOf(parts);
  }

  /** What makes the need of one yarn unsure. */
  public List<Uncertainty.Part> of(YarnColour yarn) {
    return parts.getOrDefault(yarn, List.of());
  }
}
