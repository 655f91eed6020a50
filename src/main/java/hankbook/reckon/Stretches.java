package hankbook.reckon;

import hankbook.plan.Allowances;
import hankbook.plan.Making;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the length of a warp is put together from, each in tenths of a millimetre or as a factor, exactly: finished / remaining × taken up + sampling + loom
 * waste + beside.
 *
 * @param finished cloth with its hems after wet finishing
 * @param remaining what shrinkage leaves, 1 − s
 * @param takenUp warp over cloth off the loom, 1 + c
 * @param sampling of the warp
 * @param loomWaste of the warp
 * @param beside fringes, gaps, and what the warp is longer than all this
 */
record Stretches(BigFraction finished, BigFraction remaining, BigFraction takenUp, BigFraction sampling, BigFraction loomWaste, BigFraction beside) {
  static Stretches planned(Making making) {
    Allowances allowances = making.plan().allowances();
    BigFraction remaining = allowances.lengthShrinkage().remaining();
    return new Stretches(
            making.cloth().multiply(remaining), remaining, allowances.warpTakeUp().yarnPerCloth(), allowances.sampling().exactTenths(),
            allowances.loomWaste().exactTenths(), BigFraction.ZERO)
        .of(making.length());
  }

  /** Beside it what makes the warp this long. */
  Stretches of(BigFraction length) {
    return new Stretches(finished, remaining, takenUp, sampling, loomWaste, beside.add(length).subtract(length()));
  }

  Stretches withCloth(BigFraction other, BigFraction otherBeside) {
    return new Stretches(other, remaining, takenUp, sampling, loomWaste, otherBeside);
  }

  Stretches withRemaining(BigFraction other) {
    return new Stretches(finished, other, takenUp, sampling, loomWaste, beside);
  }

  Stretches withTakenUp(BigFraction other) {
    return new Stretches(finished, remaining, other, sampling, loomWaste, beside);
  }

  Stretches withSampling(BigFraction other) {
    return new Stretches(finished, remaining, takenUp, other, loomWaste, beside);
  }

  Stretches withLoomWaste(BigFraction other) {
    return new Stretches(finished, remaining, takenUp, sampling, other, beside);
  }

  BigFraction length() {
    return offLoom().multiply(takenUp).add(sampling).add(loomWaste).add(beside);
  }

  BigFraction offLoom() {
    return finished.divide(remaining);
  }

  /** Cloth woven as sampling. */
  BigFraction sampled() {
    return sampling.divide(takenUp);
  }
}
