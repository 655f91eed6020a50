package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.measure.Length;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AllotmentWarningsTest {
  private static final YarnColour YARN = new YarnColour("Fjara", "Ash");

  @Test
  void skeinsOfUnknownLotAreMixedLikeAnyOthers() {
    assertThat(texts(1, 20, skein("A", "", 50), skein("B", "", 50)))
        .containsExactly("Fjara Ash: the warp takes more than one dye lot: unknown (skein A), unknown (skein B).");
    assertThat(texts(1, 20, skein("A", "7", 50), skein("B", "7", 50))).isEmpty();
  }

  @Test
  void tooFewPackagesToWindTogetherAreWarnedOfWithWhatLacks() {
    assertThat(texts(4, 20, skein("A", "7", 60), skein("B", "7", 60)))
        .containsExactly(
            "Fjara Ash: winding 4 threads together takes 5 passes, so no package may give more than 5 of the 20 ends of 5 m; "
                + "the packages on the shelf come to 10 too few, which 2 more of 25 m would give.");
    assertThat(texts(2, 20, skein("A", "7", 60), skein("B", "7", 60))).isEmpty();
  }

  @Test
  void anAllotmentThatIsNotProvenSaysSo() {
    Demand demand = new Demand(10, Length.metres(5), Length.ZERO, Length.metres(5));
    Allotment allotment = new Allotment(List.of(), 10, Length.ZERO, false);
    assertThat(new AllotmentWarnings(YARN, demand, allotment, List.of()).all()).extracting(Warning::code).containsExactly(Warning.Code.UNPROVEN);
  }

  @Test
  void thatOthersMayYetCoverItIsSaidOnlyWhereTheMetresAreThere() {
    Demand demand = new Demand(10, Length.metres(5), Length.ZERO, Length.metres(5));
    Allotment givenUp = new Allotment(List.of(), 10, Length.ZERO, false);
    assertThat(new AllotmentWarnings(YARN, demand, givenUp, List.of(skein("A", "7", 49))).all().getFirst().text()).endsWith("others may serve better.");
    assertThat(new AllotmentWarnings(YARN, demand, givenUp, List.of(skein("A", "7", 50))).all().getFirst().text()).endsWith("and some may yet cover it.");
  }

  @Test
  void aWeftOfOneYarnFromTwoLotsIsWarnedOfInItsOwnWords() {
    List<Skein> skeins = List.of(skein("A", "7", 50), skein("B", "8", 50));
    Demand demand = new Demand(List.of(), Length.metres(80), false, Length.metres(5), 1);
    Allotment both = new Allotment(List.of(new Share("A", List.of(), Length.metres(50), ""), new Share("B", List.of(), Length.metres(30), "")), 0, Length.ZERO, true);
    assertThat(new AllotmentWarnings(YARN, demand, both, skeins).all()).extracting(Warning::code, Warning::text).containsExactly(
        tuple(Warning.Code.MIXED_LOTS, "Fjara Ash: the weft takes more than one dye lot: 7, 8. Weave them in turn, two picks of each, or change between pieces."));
    Allotment one = new Allotment(List.of(new Share("A", List.of(), Length.metres(50), "")), 0, Length.ZERO, true);
    assertThat(new AllotmentWarnings(YARN, demand, one, skeins).all()).isEmpty();
  }

  private static List<String> texts(int threads, int ends, Skein... skeins) {
    Demand demand = new Demand(List.of(new EndKind(ends, Length.metres(5), false)), Length.ZERO, false, Length.metres(5), threads);
    List<Candidate> candidates = List.of(skeins).stream().map(skein -> new Candidate(skein.code(), skein.lot(), false, skein.holds(), LocalDate.MAX)).toList();
    return new AllotmentWarnings(YARN, demand, Allotting.best(candidates, demand), List.of(skeins)).all().stream().map(Warning::text).toList();
  }

  private static Skein skein(String code, String lot, int metres) {
    return new Skein(
        code, YARN, "", "wool", Optional.empty(), PackageForm.CONE, Optional.of(Length.metres(metres)), Optional.empty(), false, lot, "", Optional.empty(),
        Optional.empty(), Optional.empty());
  }
}
