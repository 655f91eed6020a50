package hankbook.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Plans side by side; the sums of three mats are worked out at {@link Mats}. */
class AlternativesTest {
  private static final List<Skein> STOCK = List.of(Mats.skein("A", Mats.WARP, "250 m"), Mats.skein("B", Mats.WEFT, "300 m"));
  private static final Map<String, List<Worth>> PAID = Mats.worths("A 250 m 25.00 EUR", "B 300 m 10.00 EUR");

  private static Contender mats(String name, int count, Map<String, List<Worth>> paid) {
    Plan plan = Mats.plan(List.of(new Piece("mat", count, Mats.cm(50), Mats.cm(20), Length.ZERO, Length.ZERO)), Percentage.ZERO, 0);
    return new Contender(name, PlanCheck.of(plan, STOCK, Judgement.DEFAULT), Mats.cost(plan, STOCK, paid, Judgement.DEFAULT, Map.of()));
  }

  private static Aspect row(Alternatives alternatives, Trait trait) {
    return alternatives.aspects().stream().filter(aspect -> aspect.trait() == trait).findFirst().orElseThrow();
  }

  @Example
  void eachRowSaysWhatEachPlanHasWhetherTheyDifferAndWhichIsBest() {
    Alternatives two = Alternatives.of(List.of(mats("three", 3, PAID), mats("two", 2, PAID)));
    // A mat less is 0.5 m less of warp, 100 ends of it 50 m.
    assertThat(row(two, Trait.NEED).figures()).containsExactly(Optional.of(new Figure.Metres(Length.metres(200))), Optional.of(new Figure.Metres(Length.metres(150))));
    assertThat(row(two, Trait.NEED).beyondFirst(1)).contains(new Figure.Metres(Length.metres(-50)));
    assertThat(row(two, Trait.NEED).best()).containsExactly(1);
    assertThat(row(two, Trait.LEFT).best()).containsExactly(1);
    assertThat(row(two, Trait.WARP_LENGTH).figures().getLast()).contains(new Figure.Metres(Length.parse("1.5 m")));
    assertThat(row(two, Trait.ENDS).differs()).isFalse();
    assertThat(row(two, Trait.PIECES).best()).isEmpty();
    // 25.67 in all are 8.55 each; 150 of 250 m for 25.00 are 15.00, 120 of 300 m for 10.00 are 4.00: 19.00 for two.
    assertThat(row(two, Trait.COST).figures().getLast()).contains(new Figure.Amount(Mats.money("19.00 EUR")));
    assertThat(row(two, Trait.EACH).figures()).containsExactly(Optional.of(new Figure.Amount(Mats.money("8.55 EUR"))), Optional.of(new Figure.Amount(Mats.money("9.50 EUR"))));
    assertThat(row(two, Trait.EACH).best()).containsExactly(0);
    // For each end 30 s of winding, 10 of beaming, 30 of threading, 10 of sleying; 4 s a pick, 15 min a mat: 8000 + 850 x 4 + 2700 s, and 8000 + 600 x 4 + 1800 s.
    assertThat(row(two, Trait.TIME).figures()).containsExactly(Optional.of(new Figure.Time(Duration.ofSeconds(14_100))), Optional.of(new Figure.Time(Duration.ofSeconds(12_200))));
  }

  @Example
  void aCostThatLeavesYarnOutIsNotCalledTheLeast() {
    Alternatives unpaid = Alternatives.of(List.of(mats("paid", 3, PAID), mats("half paid", 3, Mats.worths("A 250 m 25.00 EUR"))));
    assertThat(row(unpaid, Trait.COST).differs()).isTrue();
    assertThat(row(unpaid, Trait.COST).best()).isEmpty();
  }

  @Example
  void whatIsShortStandsWorseAndSaysWhatToBuy() {
    Alternatives two = Alternatives.of(List.of(mats("three", 3, PAID), mats("nine", 9, PAID)));
    assertThat(row(two, Trait.VERDICT).figures().getLast()).contains(new Figure.Stands(Verdict.SHORT));
    assertThat(row(two, Trait.VERDICT).best()).containsExactly(0);
    assertThat(row(two, Trait.PUT_UPS).figures().getFirst()).contains(new Figure.Count(0));
    assertThat(row(two, Trait.SPEND_NOW).figures().getLast()).contains(new Figure.Unknown());
    assertThat(row(two, Trait.SPEND_NOW).best()).isEmpty();
  }

  @Example
  void noMoreThanFourAreLaidSideBySide() {
    assertThatThrownBy(() -> Alternatives.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    Contender one = mats("one", 3, PAID);
    assertThatThrownBy(() -> Alternatives.of(List.of(one, one, one, one, one))).isInstanceOf(IllegalArgumentException.class);
    assertThat(Alternatives.of(List.of(one, one, one, one)).aspects()).noneMatch(Aspect::differs).allMatch(aspect -> aspect.best().isEmpty());
  }

  @Property(tries = 200, seed = "20261127")
  void theBestAreNeverAllNorBeatenAndTheOrderOfThePlansDoesNotMatter(@ForAll @LongRange(max = 1_000_000) long seed) {
    Random random = new Random(seed);
    List<Contender> plans = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      plans.add(mats("plan " + i, 1 + random.nextInt(6), PAID));
    }
    Alternatives found = Alternatives.of(plans);
    Alternatives turned = Alternatives.of(plans.reversed());
    for (Aspect aspect : found.aspects()) {
      assertThat(aspect.best()).hasSizeLessThan(plans.size());
      assertThat(aspect.differs() || aspect.best().isEmpty()).isTrue();
      for (int best : aspect.best()) {
        aspect.figures().forEach(other -> assertThat(beats(aspect, other.orElseThrow(), aspect.figures().get(best).orElseThrow())).isFalse());
      }
      Aspect other = turned.aspects().stream().filter(same -> same.trait() == aspect.trait() && same.yarn().equals(aspect.yarn())).findFirst().orElseThrow();
      assertThat(other.differs()).isEqualTo(aspect.differs());
      assertThat(other.best()).isEqualTo(Set.copyOf(aspect.best().stream().map(place -> plans.size() - 1 - place).toList()));
    }
  }

  private static boolean beats(Aspect aspect, Figure one, Figure other) {
    int order = one.against(other).orElseThrow();
    return aspect.trait().better() == Trait.Better.LEAST ? order < 0 : order > 0;
  }
}
