package hankbook.yarn;

import hankbook.measure.Length;
import hankbook.measure.YarnNumber;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What was read off one skein at one time.
 *
 * @param label the length printed on it
 * @param turns counted on a reel
 * @param weighing on a balance
 */
public record Measures(Optional<Length> label, Optional<Turns> turns, Optional<Weighing> weighing) {
  /** Nothing read off it: a length that is given outright. */
  public static final Measures NONE = new Measures(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * The one that is used: a weight with a grist, which says what is there now; else turns, which say what was once wound; else a printed length.
   *
   * @param grist the yarn number
   * @param sample the yarn's own grist, which is used before its number
   * @param fibre by which moisture is judged
   */
  public Measurement measurement(Optional<YarnNumber> grist, Optional<GristSample> sample, String fibre) {
    if (weighing.isPresent() && (grist.isPresent() || sample.isPresent())) {
      Weighing weighed = weighing.get();
      return new Measurement.ByWeight(weighed, weighed.netAtStandard(fibre), sample.map(GristSample::grist).orElseGet(() -> grist.orElseThrow().grist()), sample);
    }
    return turns.<Measurement>map(Measurement.ByTurns::new)
        .or(() -> label.map(length -> new Measurement.ByLabel(length, grist.map(number -> number.grist().massOf(length, RoundingMode.HALF_UP)).filter(mass -> mass.milligrams() > 0))))
        .orElseGet(Measurement.Unmeasured::new);
  }
}
