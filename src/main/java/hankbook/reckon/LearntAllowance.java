package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.plan.Allowances;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where what is learnt stands in a plan's allowances. Take-up is learnt of the cloth, whatever the plan says it of. */
final class LearntAllowance {
  private LearntAllowance() {}

  /** What the allowances say of it; empty where it is a time. */
  static Optional<BigFraction> in(Allowances allowances, Learnable which) {
    return switch (which) {
      case WARP_TAKE_UP -> Optional.of(ofCloth(allowances.warpTakeUp()));
      case WEFT_TAKE_UP -> Optional.of(ofCloth(allowances.weftTakeUp()));
      case DRAW_IN -> Optional.of(allowances.drawIn().fraction());
      case LENGTH_SHRINKAGE -> Optional.of(allowances.lengthShrinkage().fraction());
      case WIDTH_SHRINKAGE -> Optional.of(allowances.widthShrinkage().fraction());
      case LOOM_WASTE -> Optional.of(allowances.loomWaste().exactTenths());
      case WINDING -> Optional.of(allowances.winding().fraction());
      case WINDING_TIME, BEAMING_TIME, THREADING_TIME, SLEYING_TIME, WEAVING_TIME, FINISHING_TIME -> Optional.empty();
    };
  }

  /** The allowances with another value of it, at least zero; the same where it is a time. */
  static Allowances with(Allowances allowances, Learnable which, BigFraction value) {
    return switch (which) {
      case WARP_TAKE_UP -> allowances.withWarpTakeUp(new Percentage(value, Percentage.Base.CLOTH));
      case WEFT_TAKE_UP -> allowances.withWeftTakeUp(new Percentage(value, Percentage.Base.CLOTH));
      case DRAW_IN -> allowances.withDrawIn(new Percentage(value, Percentage.Base.UNSAID));
      case LENGTH_SHRINKAGE -> allowances.withLengthShrinkage(new Percentage(value, Percentage.Base.UNSAID));
      case WIDTH_SHRINKAGE -> allowances.withWidthShrinkage(new Percentage(value, Percentage.Base.UNSAID));
      case LOOM_WASTE -> allowances.withLoomWaste(Length.ofTenths(value, RoundingMode.HALF_UP));
      case WINDING -> allowances.withWinding(new Percentage(value, Percentage.Base.UNSAID));
      case WINDING_TIME, BEAMING_TIME, THREADING_TIME, SLEYING_TIME, WEAVING_TIME, FINISHING_TIME -> allowances;
    };
  }

  private static BigFraction ofCloth(Percentage takeUp) {
    return takeUp.yarnPerCloth().subtract(BigFraction.ONE);
  }
}
