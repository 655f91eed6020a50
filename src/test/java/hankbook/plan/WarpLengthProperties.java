package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class WarpLengthProperties {
  @Property(seed = "20261219")
  void thePartsSumAndTheRoundingIsLessThanAStep(
      @ForAll @IntRange(min = 1, max = 30) int count,
      @ForAll @IntRange(min = 1, max = 50_000) int length,
      @ForAll @IntRange(max = 30) int takeUp,
      @ForAll @IntRange(max = 30) int shrinkage,
      @ForAll @IntRange(max = 5_000) int step) {
    WarpLength warp = warp(count, length, takeUp, shrinkage, step);
    assertThat(warp.parts().values().stream().reduce(Length.ZERO, Length::plus)).isEqualTo(warp.total());
    assertThat(warp.parts().values()).noneMatch(Length::isNegative);
    assertThat(warp.parts().get(WarpPart.ROUNDING)).isLessThanOrEqualTo(new Length(step));
  }

  @Property(seed = "20261220")
  void aLongerPieceNeverNeedsAShorterWarp(
      @ForAll @IntRange(min = 1, max = 50_000) int length, @ForAll @IntRange(max = 500) int more, @ForAll @IntRange(max = 30) int takeUp) {
    assertThat(warp(3, length + more, takeUp, 8, 100).total()).isGreaterThanOrEqualTo(warp(3, length, takeUp, 8, 100).total());
  }

  private static WarpLength warp(int count, int length, int takeUp, int shrinkage, int step) {
    Piece piece = new Piece("piece", count, new Length(length), Length.metres(1), new Length(300), new Length(700));
    Percentage shrunk = Percentage.parse(shrinkage + " %");
    Allowances allowances =
        new Allowances(
            Percentage.parse(takeUp + " % of yarn"), Percentage.ZERO, Percentage.ZERO, shrunk, shrunk, new Length(3_000), new Length(7_000), new Length(50),
            Percentage.ZERO, 0, new Length(step));
    return WarpLength.forPieces(List.of(piece), allowances);
  }
}
