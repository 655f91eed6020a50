package hankbook.yarn;

import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.Optional;

/**
 * A skein as it stood on the balance.
 *
 * @param gross with what it is wound on
 * @param tare what it is wound on, at most the gross
 * @param regain the moisture that was in the yarn, as a part of its dry mass, up to 100 %; empty where it is taken to be the standard one
 */
public record Weighing(Mass gross, Mass tare, Optional<Percentage> regain) {
  public Weighing {
    if (tare.compareTo(gross) > 0) {
      throw new Unreadable(tare.toString(), Phrase.of("a tare of at most the gross, {0}", gross));
    }
    regain.ifPresent(Regain::refuseUnlessPossible);
  }

  /** A weighing at the standard regain. */
  public Weighing(Mass gross, Mass tare) {
    this(gross, tare, Optional.empty());
  }

  /** The yarn alone, as moist as it was. */
  public Mass net() {
    return gross.minus(tare);
  }

  /**
   * The yarn alone, brought to the standard regain of its fibre, at which yarn numbers are given.
   *
   * @throws Unreadable if a regain was measured and the fibre's standard one is not known
   */
  public Mass netAtStandard(String fibre) {
    return regain.map(now -> Regain.atStandard(net(), now, Regain.known(fibre))).orElseGet(this::net);
  }
}
