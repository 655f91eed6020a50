package hankbook.reckon;

import hankbook.measure.Length;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a warp's length was really put together from, as far as it was measured; what agrees with the plan to the tenth of a millimetre is as planned. */
final class Measures {
  private final Made made;
  private final Realised really;
  private final Stretches planned;

  Measures(Made made, Realised really, Stretches planned) {
    this.made = made;
    this.really = really;
    this.planned = planned;
  }

  /** As it really was; of the length that was wound, where that is known. */
  Stretches found() {
    BigFraction sampling = really.sampling().map(Found::value).map(Length::exactTenths).orElse(planned.sampling());
    BigFraction loomWaste = really.loomWaste().map(Found::value).map(Length::exactTenths).orElse(planned.loomWaste());
    BigFraction leftForCloth = WarpWays.wound(made).map(wound -> wound.exactTenths().subtract(sampling).subtract(loomWaste)).orElse(BigFraction.ZERO);
    Stretches found = new Stretches(finished(leftForCloth), remaining(), takenUp(), sampling, loomWaste, planned.beside());
    return WarpWays.wound(made).map(wound -> found.of(wound.exactTenths())).orElse(found);
  }

  private BigFraction finished(BigFraction leftForCloth) {
    return measured().or(() -> left(leftForCloth)).filter(length -> !same(length, planned.finished())).orElse(planned.finished());
  }

  /** The finished length, where the length off the loom does not speak against it; without it, what the length off the loom leaves as planned. */
  private Optional<BigFraction> measured() {
    Optional<Length> finished = made.actuals().cloth().lengthFinished();
    if (finished.isEmpty()) {
      return offLoom().map(cloth -> cloth.exactTenths().multiply(planned.remaining()));
    }
    return finished.filter(_ -> offLoom().isEmpty() || really.part(Way.LENGTH_SHRINKAGE).isPresent()).map(Length::exactTenths);
  }

  /** A warp without pieces is woven as far as it goes, unless its wefts say how far. */
  private Optional<BigFraction> left(BigFraction leftForCloth) {
    boolean asFarAsItGoes = made.plan().pieces().isEmpty() && made.plan().wefts().stream().allMatch(weft -> weft.length().isEmpty());
    return Optional.of(leftForCloth.divide(planned.takenUp()).multiply(planned.remaining())).filter(length -> asFarAsItGoes && length.signum() > 0);
  }

  private BigFraction remaining() {
    return really.part(Way.LENGTH_SHRINKAGE)
        .map(BigFraction.ONE::subtract)
        .filter(part -> offLoom().filter(cloth -> !same(cloth.exactTenths().multiply(part), cloth.exactTenths().multiply(planned.remaining()))).isPresent())
        .orElse(planned.remaining());
  }

  private BigFraction takenUp() {
    return really.part(Way.WARP_TAKE_UP)
        .map(BigFraction.ONE::add)
        .filter(factor -> offLoom().filter(cloth -> !same(cloth.exactTenths().multiply(factor), cloth.exactTenths().multiply(planned.takenUp()))).isPresent())
        .orElse(planned.takenUp());
  }

  private Optional<Length> offLoom() {
    return made.actuals().cloth().lengthOffLoom();
  }

  private static boolean same(BigFraction one, BigFraction other) {
    return one.subtract(other).abs().compareTo(BigFraction.ONE) <= 0;
  }
}
