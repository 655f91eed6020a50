package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Length;
import hankbook.reckon.Cause;
import hankbook.reckon.YarnAccount;
import java.util.List;
import org.junit.jupiter.api.Test;

class WentBarsTest {
  private static WentBars bars(long planned, long between, long used) {
    YarnAccount.Step first = new YarnAccount.Step(Cause.WARP_LENGTH, Length.metres(planned), Length.metres(between));
    YarnAccount.Step last = new YarnAccount.Step(Cause.UNEXPLAINED, Length.metres(between), Length.metres(used));
    return new WentBars(Length.metres(planned), List.of(first, last), Length.metres(used));
  }

  @Test
  void smallStepsAreDrawnOnAScaleThatDoesNotBeginAtNothing() {
    WentBars bars = bars(1000, 1040, 1020);
    assertThat(bars.beginning()).as("40 m reached, 0.4 of them below the least").isEqualTo(Length.metres(984));
    assertThat(bars.place(Length.metres(984))).isZero();
    assertThat(bars.place(Length.metres(1040))).isEqualTo(1);
    assertThat(bars.place(Length.metres(1020))).isCloseTo(36.0 / 56, within(1e-9));
  }

  @Test
  void largeStepsAndNoStepsAreDrawnFromNothing() {
    assertThat(bars(300, 900, 700).beginning()).isEqualTo(Length.ZERO);
    assertThat(bars(500, 500, 500).beginning()).isEqualTo(Length.ZERO);
    assertThat(bars(0, 0, 0).place(Length.ZERO)).as("nothing planned and nothing used").isZero();
  }
}
