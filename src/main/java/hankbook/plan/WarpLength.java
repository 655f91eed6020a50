package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The length of a warp and what becomes of it.
 *
 * <p>For each piece: off the loom C = (finished + hems) / (1 − shrinkage), the warp woven up in it C × (1 + take-up); to these come the
 * fringes, the gaps, sampling and loom waste, and the sum is rounded up to the plan's step.
 *
 * @param total the length of each end
 * @param woven cloth off the loom that takes picks, sampling included, in tenths of a millimetre, exactly
 * @param parts every part, zero ones too; they sum to the total. Where the length was given outright and pieces too, the difference
 *     stands under rounding, negative where the warp is too short for them
 */
public record WarpLength(Length total, BigFraction woven, Map<WarpPart, Length> parts) {
  public WarpLength {
    parts = Collections.unmodifiableMap(new EnumMap<>(parts));
    Length sum = parts.values().stream().reduce(Length.ZERO, Length::plus);
    if (!sum.equals(total)) {
      throw new IllegalArgumentException("parts of the warp sum to " + sum + ", wanted " + total);
    }
  }

  /** The warp of a plan: of the length given outright, else as its pieces ask for it. */
  static WarpLength of(Plan plan) {
    return plan.warp()
        .length()
        .map(given -> given(given, plan.pieces(), plan.allowances()))
        .orElseGet(() -> forPieces(plan.pieces(), plan.allowances()));
  }

  /** The warp that these pieces ask for, one after the other. */
  public static WarpLength forPieces(List<Piece> pieces, Allowances allowances) {
    Sums sums = Sums.of(pieces, allowances);
    BigFraction exact = sums.wovenUp.add(sums.unwoven.tenthsOfMillimetre());
    Length step = allowances.roundUpTo();
    Length total =
        step.isPositive()
            ? step.times(Exact.roundedUp(exact.divide(step.tenthsOfMillimetre())))
            : Length.ofTenths(exact, RoundingMode.HALF_UP);
    return sums.lengthOf(total, allowances);
  }

  /** A warp of a length given outright, of which these pieces are to be cut. */
  public static WarpLength given(Length total, List<Piece> pieces, Allowances allowances) {
    return pieces.isEmpty() ? leftForCloth(total, allowances) : Sums.of(pieces, allowances).lengthOf(total, allowances);
  }

  private static WarpLength leftForCloth(Length total, Allowances allowances) {
    Length wovenUp = Length.max(Length.ZERO, total.minus(allowances.sampling()).minus(allowances.loomWaste()));
    BigFraction offLoom = wovenUp.exactTenths().divide(allowances.warpTakeUp().yarnPerCloth());
    Length cloth = Length.ofTenths(offLoom.multiply(allowances.lengthShrinkage().remaining()), RoundingMode.HALF_UP);
    Length shrinkage = Length.ofTenths(offLoom, RoundingMode.HALF_UP).minus(cloth);
    Map<WarpPart, Length> parts = empty();
    parts.put(WarpPart.CLOTH, cloth);
    parts.put(WarpPart.SHRINKAGE, shrinkage);
    parts.put(WarpPart.TAKE_UP, wovenUp.minus(cloth).minus(shrinkage));
    parts.put(WarpPart.SAMPLING, allowances.sampling());
    parts.put(WarpPart.LOOM_WASTE, allowances.loomWaste());
    parts.put(WarpPart.ROUNDING, total.minus(wovenUp).minus(allowances.sampling()).minus(allowances.loomWaste()));
    return new WarpLength(total, offLoom.add(allowances.sampledCloth()), parts);
  }

  private static Map<WarpPart, Length> empty() {
    Map<WarpPart, Length> parts = new EnumMap<>(WarpPart.class);
    for (WarpPart part : WarpPart.values()) {
      parts.put(part, Length.ZERO);
    }
    return parts;
  }

  /** The pieces added up: exact where shrinkage and take-up divide, recorded where the plan gave a length. */
  private record Sums(Length cloth, Length hems, Length fringe, Length gaps, BigFraction offLoom, BigFraction wovenUp, Length unwoven) {
    static Sums of(List<Piece> pieces, Allowances allowances) {
      Length cloth = Length.ZERO;
      Length hems = Length.ZERO;
      Length fringe = Length.ZERO;
      long count = 0;
      for (Piece piece : pieces) {
        cloth = cloth.plus(piece.length().times(piece.count()));
        hems = hems.plus(piece.hems().times(piece.count()));
        fringe = fringe.plus(piece.fringe().times(piece.count()));
        count += piece.count();
      }
      Length gaps = allowances.gap().times(Math.max(0, count - 1));
      BigFraction offLoom = cloth.plus(hems).exactTenths().divide(allowances.lengthShrinkage().remaining());
      Length unwoven = fringe.plus(gaps).plus(allowances.sampling()).plus(allowances.loomWaste());
      return new Sums(cloth, hems, fringe, gaps, offLoom, offLoom.multiply(allowances.warpTakeUp().yarnPerCloth()), unwoven);
    }

    WarpLength lengthOf(Length total, Allowances allowances) {
      // Rounded as running sums, so that no two roundings can add up to more than the warp.
      Length offLoomRecorded = Length.ofTenths(offLoom, RoundingMode.HALF_UP);
      Length wovenUpRecorded = Length.ofTenths(wovenUp, RoundingMode.HALF_UP);
      Map<WarpPart, Length> parts = empty();
      parts.put(WarpPart.CLOTH, cloth);
      parts.put(WarpPart.HEMS, hems);
      parts.put(WarpPart.SHRINKAGE, offLoomRecorded.minus(cloth).minus(hems));
      parts.put(WarpPart.TAKE_UP, wovenUpRecorded.minus(offLoomRecorded));
      parts.put(WarpPart.FRINGE, fringe);
      parts.put(WarpPart.GAPS, gaps);
      parts.put(WarpPart.SAMPLING, allowances.sampling());
      parts.put(WarpPart.LOOM_WASTE, allowances.loomWaste());
      parts.put(WarpPart.ROUNDING, total.minus(wovenUpRecorded).minus(unwoven));
      return new WarpLength(total, offLoom.add(allowances.sampledCloth()), parts);
    }
  }
}
