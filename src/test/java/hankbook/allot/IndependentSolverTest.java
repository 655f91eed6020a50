package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same optimum from the CP-SAT solver of OR-Tools, on shelves too large to try every choice. Lengths here are small numbers of tenths of a millimetre. */
class IndependentSolverTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aConstraintProgrammeFindsNothingBetter(int seed) {
    Random random = new Random(seed);
    List<Candidate> skeins = skeins(random, 10 + random.nextInt(9));
    Demand demand = demand(random);
    Allotment allotment = Allotting.best(skeins, demand);
    assertThat(allotment.proven()).isTrue();
    assertThat(withoutAges(NaiveAllotting.score(allotment, skeins, demand))).isEqualTo(ConstraintProgramme.best(skeins, demand));
  }

  private static NaiveAllotting.Score withoutAges(NaiveAllotting.Score score) {
    return new NaiveAllotting.Score(score.uncovered(), score.windsApart(), score.lots(), score.unopened(), score.touched(), score.lessRemnant(), List.of());
  }

  private static List<Candidate> skeins(Random random, int count) {
    List<Candidate> skeins = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String lot = List.of("", "A", "B", "C").get(random.nextInt(4));
      skeins.add(new Candidate("S" + i, lot, random.nextInt(3) == 0, new Length(20 + random.nextInt(80)), LocalDate.of(2025, 1, 1 + i)));
    }
    return skeins;
  }

  private static Demand demand(Random random) {
    List<EndKind> kinds = new ArrayList<>(List.of(new EndKind(5 + random.nextInt(20), new Length(8 + random.nextInt(4)), false)));
    if (random.nextBoolean()) {
      kinds.add(new EndKind(2 + random.nextInt(4), new Length(16 + random.nextInt(6)), random.nextBoolean()));
    }
    return new Demand(kinds, new Length(random.nextInt(200)), random.nextInt(3) == 0, new Length(5), 1 + random.nextInt(3));
  }
}
