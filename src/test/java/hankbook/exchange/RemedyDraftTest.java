package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RemedyDraftTest {
  private static final String STRIPES = """
      {"format": "hankbook-plan/1", "name": "Stripes",
       "pieces": [{"name": "cloth", "count": "2 x 3", "length": "30 in", "width": "20 cm"}, {"length": "1.5 m", "width": "18 cm"}],
       "warp": {"sett": "10/cm", "order": [{"yarn": "Gorse", "colour": "Gold", "ends": "100 + 20"}, {"yarn": "Gorse", "colour": "Plum", "ends": 80}]},
       "weft": [{"yarn": "Gorse", "colour": "Gold", "picks": "9/cm", "share": 0.5}, {"yarn": "Selkie", "colour": "Pearl", "picks": "9/cm", "share": 0.5}],
       "allowances": {"sampling": "1 ft", "loomWaste": "70 cm"}}
      """;
  private static final String BLOCKS = """
      {"format": "hankbook-plan/1", "name": "Blocks",
       "warp": {"sett": "24/in", "endsPerUnit": 6, "sections": [{"repeats": 2, "units": 20}], "length": "6 yd",
                "order": [{"yarn": "Gorse", "colour": "Gold", "share": 1}]},
       "weft": [{"yarn": "Gorse", "colour": "Gold", "picks": "20/in", "length": "4 yd"}]}
      """;

  private static final String WRITTEN = """
      {"format": "hankbook-plan/1", "name": "Written",
       "warp": {"sett": "10/cm", "ends": 108, "length": "6 m", "selvedgeEnds": 4, "selvedge": {"yarn": "Gorse", "colour": "Gold"},
                "succession": "4 Gold, 12 x (6 Gold, 2 p), 4 Gold",
                "order": [{"yarn": "Gorse", "colour": "Gold", "ends": 80}, {"yarn": "Gorse", "colour": "Plum", "mark": "p"}]},
       "weft": [{"yarn": "Gorse", "colour": "Gold", "picks": "9/cm"}, {"yarn": "Selkie", "colour": "Pearl", "picks": "9/cm"}],
       "weftSuccession": "8 Gold, 2 Pearl"}
      """;
  private static final String UNITS = """
      {"format": "hankbook-plan/1", "name": "Units",
       "warp": {"sett": "24/in", "endsPerUnit": 6, "extendLeft": 1, "sections": [{"repeats": 2, "units": 20}], "length": "6 yd",
                "order": [{"yarn": "Gorse", "colour": "Gold", "ends": 200, "mark": "Gold"}, {"yarn": "Gorse", "colour": "Plum", "ends": 46}]},
       "weft": [{"yarn": "Gorse", "colour": "Gold", "picks": "20/in"}]}
      """;

  static List<UnaryOperator<Plan>> changesOfAnyPlan() {
    return List.of(
        plan -> plan,
        plan -> PlanVariants.withLength(plan, Length.parse("2.34 m")),
        plan -> PlanVariants.withClothLength(plan, Length.parse("2 yd")),
        plan -> PlanVariants.withEnds(plan, 77),
        plan -> PlanVariants.withSett(plan, Sett.parse("7.5/cm")),
        plan -> PlanVariants.withPicks(plan, plan.wefts().getFirst().picks(), Sett.parse("8.5/cm")),
        plan -> PlanVariants.withSampling(plan, Length.ZERO),
        plan -> PlanVariants.withSampling(plan, Length.parse("6 in")),
        plan -> PlanVariants.withYarn(plan, new YarnColour("Gorse", "Gold"), new YarnColour("Tussock", "Peat")));
  }

  static List<UnaryOperator<Plan>> changesOfPieces() {
    return List.of(
        plan -> PlanVariants.withPieces(plan, 0, 4),
        plan -> PlanVariants.withPieceLength(plan, Length.parse("101 cm")),
        plan -> PlanVariants.withWidth(plan, Length.parse("17.5 cm")),
        plan -> PlanVariants.withWidth(plan, Length.parse("19 cm")));
  }

  @ParameterizedTest
  @MethodSource({"changesOfAnyPlan", "changesOfPieces"})
  void aChangedPlanReadsBackFromTheDraftItWasPutInto(UnaryOperator<Plan> change) throws BadInput {
    readsBack(STRIPES, change);
  }

  @ParameterizedTest
  @MethodSource("changesOfAnyPlan")
  void soDoesOneWithSectionsAndLengthsOfItsOwn(UnaryOperator<Plan> change) throws BadInput {
    readsBack(BLOCKS, change);
  }

  @ParameterizedTest
  @MethodSource("changesOfAnyPlan")
  void soDoesOneWithWrittenOrdersAndOneWithUnitsToTheSide(UnaryOperator<Plan> change) throws BadInput {
    readsBack(WRITTEN, change);
    readsBack(UNITS, change);
  }

  @Test
  void aWrittenOrderIsMadeNarrowerByWholeRepeats() throws BadInput {
    readsBack(WRITTEN, plan -> PlanVariants.withRepeats(plan, 9));
    Plan asked = PlanFile.read("plan", WRITTEN);
    PlanDraft fewer = RemedyDraft.apply(PlanDraft.of(WRITTEN), asked, PlanVariants.withRepeats(asked, 9));
    assertThat(fewer.text(PlanField.of(PlanPart.WARP, "succession"))).isEqualTo("4 Gold, 9 x (6 Gold, 2 p), 4 Gold");
    assertThat(fewer.text(PlanField.of(PlanPart.WARP, "ends"))).isEqualTo("84");
    assertThat(fewer.text(new PlanField(PlanPart.ORDER, 1, "ends"))).isEqualTo("62");
  }

  private static void readsBack(String text, UnaryOperator<Plan> change) throws BadInput {
    Plan asked = PlanFile.read("plan", text);
    Plan changed = change.apply(asked);
    PlanDraft draft = RemedyDraft.apply(PlanDraft.of(text), asked, changed);
    assertThat(PlanFile.read("plan", draft.json())).isEqualTo(changed);
  }

  @Test
  void whatTheChangeLeavesAloneStaysAsItWasTypedAndALengthKeepsItsUnit() throws BadInput {
    Plan asked = PlanFile.read("plan", STRIPES);
    PlanDraft typed = PlanDraft.of(STRIPES);
    assertThat(RemedyDraft.apply(typed, asked, asked)).isEqualTo(typed);
    PlanField length = new PlanField(PlanPart.PIECES, 2, "length");
    PlanField sampling = PlanField.of(PlanPart.ALLOWANCES, "sampling");
    assertThat(RemedyDraft.apply(typed, asked, PlanVariants.withPieceLength(asked, Length.parse("142 cm"))).text(length)).isEqualTo("1.42 m");
    PlanDraft less = RemedyDraft.apply(typed, asked, PlanVariants.withSampling(asked, Length.parse("6 in")));
    assertThat(less).isEqualTo(typed.with(sampling, "0.5 ft"));
  }

  @Test
  void aNarrowerClothKeepsTheProportionsOfItsStripes() throws BadInput {
    Plan asked = PlanFile.read("plan", STRIPES);
    PlanDraft narrow = RemedyDraft.apply(PlanDraft.of(STRIPES), asked, PlanVariants.withWidth(asked, Length.parse("15 cm")));
    assertThat(narrow.text(new PlanField(PlanPart.ORDER, 1, "ends"))).isEqualTo("90");
    assertThat(narrow.text(new PlanField(PlanPart.ORDER, 2, "ends"))).isEqualTo("60");
    assertThat(narrow.text(new PlanField(PlanPart.PIECES, 2, "width"))).isEqualTo("15 cm");
  }
}
