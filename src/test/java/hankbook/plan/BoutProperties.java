package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class BoutProperties {
  private static final WoundEnd ASH = new WoundEnd(new YarnColour("Fjara", "Ash"), Length.metres(4), 0);

  /** 690 ends, 3 threads together: 230 passes, 115 there and back of 6 ends; 20 of them fill a bout of 120. So 6 bouts, of 19 or 20 there and back. */
  @Example
  void aWarpIsDividedEvenlyIntoTheFewestBouts() {
    List<Bout> bouts = Bout.of(Step.ofRun(new WoundRun(ASH, 690), 3, false).passes(), 120);
    assertThat(bouts).hasSize(6);
    assertThat(bouts).extracting(Bout::ends).containsExactlyInAnyOrder(114, 114, 114, 114, 114, 120);
    assertThat(bouts.getLast().lastPass()).isEqualTo(230);
  }

  @Example
  void aBoutHoldsAtLeastOnePassThereAndBack() {
    assertThatThrownBy(() -> Bout.of(Step.ofRun(new WoundRun(ASH, 100), 4, false).passes(), 7))
        .isInstanceOf(Unreadable.class)
        .hasMessageContaining("a bout of at least 8 ends, which one pass there and back lays");
  }

  @Example
  void aWarpIsNotDividedIntoMoreBoutsThanAnyoneCounts() {
    assertThatThrownBy(() -> Bout.of(Step.ofRun(new WoundRun(ASH, 1002), 1, false).passes(), 2))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found '2', wanted a bout of more ends, so that there are at most 500 bouts");
  }

  @Property(seed = "20261212")
  void boutsHoldAllPassesInEvenNumbersAndAreOneInNumberWithTheFewest(
      @ForAll @IntRange(min = 1, max = 400) int ends, @ForAll @IntRange(min = 1, max = 6) int threads, @ForAll @IntRange(min = 12, max = 130) int most) {
    List<Pass> passes = Step.ofRun(new WoundRun(ASH, ends), threads, false).passes();
    List<Bout> bouts = Bout.of(passes, most);
    assertThat(bouts.stream().mapToInt(Bout::ends).sum()).isEqualTo(ends);
    assertThat(bouts.get(0).firstPass()).isEqualTo(1);
    assertThat(bouts.getLast().lastPass()).isEqualTo(passes.size());
    IntStream.range(1, bouts.size()).forEach(i -> {
      assertThat(bouts.get(i).firstPass()).isEqualTo(bouts.get(i - 1).lastPass() + 1);
      assertThat(bouts.get(i - 1).lastPass() % 2).isZero();
    });
    assertThat(bouts).allMatch(bout -> bout.ends() <= most);
    int pairsToABout = most / (2 * threads);
    assertThat(bouts).hasSize(Math.ceilDiv(Math.ceilDiv(passes.size(), 2), pairsToABout) - (lastPairSqueezesIn(ends, threads, most) ? 1 : 0));
    int least = bouts.stream().limit(Math.max(1, bouts.size() - 1)).mapToInt(Bout::ends).min().orElse(0);
    int greatest = bouts.stream().mapToInt(Bout::ends).max().orElse(0);
    assertThat(greatest - least).isLessThanOrEqualTo(2 * threads);
  }

  /** What is left over for a last, smaller pass there and back may still find room in a full bout. */
  private static boolean lastPairSqueezesIn(int ends, int threads, int most) {
    int pair = 2 * threads;
    int fullPairs = ends / pair;
    int rest = ends % pair;
    return rest > 0 && fullPairs > 0 && fullPairs % (most / pair) == 0 && rest <= most % pair;
  }
}
