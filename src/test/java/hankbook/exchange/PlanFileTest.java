package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.gear.Sley;
import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.plan.Dressing;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {
  static final String TOWELS =
      """
      { "format": "hankbook-plan/1", "name": "Quay towels",
        "pieces": [{"name": "towel", "count": 4, "length": "70 cm", "width": "48 cm", "hems": "8 cm", "fringe": "0 cm"}],
        "warp": {"sett": "10/cm", "endsMultiple": 4, "selvedgeEnds": 0,
                 "order": [{"yarn": "Skerry 16/2", "colour": "Chalk", "share": 0.8}, {"yarn": "Skerry 16/2", "colour": "Woad", "share": 0.2}]},
        "weft": [{"yarn": "Skerry 16/2", "colour": "Chalk", "picks": "9/cm", "share": 1}],
        "allowances": {"warpTakeUp": "8 % of cloth", "weftTakeUp": "5 % of cloth", "drawIn": "6 %", "lengthShrinkage": "8 %", "widthShrinkage": "8 %",
                       "sampling": "30 cm", "loomWaste": "70 cm", "gap": "0 cm", "winding": "0 %", "repairEnds": 0, "roundUpTo": "1 cm"},
        "winding": {"threads": 2} }
      """;

  @Test
  void theExampleOfTheFormatIsRead() throws BadInput {
    Plan plan = PlanFile.read("towels.json", TOWELS);
    assertThat(plan.threads()).isEqualTo(2);
    assertThat(Yardage.of(plan).warp().total()).isEqualTo(Length.parse("467 cm"));
  }

  @Test
  void sectionsMakeTheEnds() throws BadInput {
    String sections =
        TOWELS.replace("\"sett\": \"10/cm\",", "\"sett\": \"40/in\", \"endsPerUnit\": 6, \"sections\": [{\"units\": 15}, {\"repeats\": 2, \"units\": 42}, {\"units\": 16}],");
    assertThat(PlanFile.read("units.json", sections).warp().ends()).hasValue(690);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      "70 cm"            | "70"            | plan.json, pieces[1].length: found '70', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)
      "count": 4         | "count": 0      | plan.json, pieces[1]: found '0', wanted a count of at least 1
      "fringe"           | "tassels"       | plan.json, pieces[1].tassels: found 'tassels', wanted one of count, fringe, hems, length, name, width
      "10/cm"            | "ten"           | plan.json, warp.sett: found 'ten', wanted threads to a length such as 10/cm or 24/in
      "6 %"              | "six"           | plan.json, allowances.drawIn: found 'six', wanted a percentage such as 8 %, 8 % of cloth or 8 % of yarn
      hankbook-plan/1    | hankbook-plan/9 | plan.json, format: found 'hankbook-plan/9', wanted hankbook-plan/1
      "Quay towels"      | " "             | plan.json, plan: found nothing, wanted a name for the plan
      "endsMultiple"     | "weave": "lace", "endsMultiple" | plan.json, warp.weave: found 'lace', wanted a weave such as plain, 2/2 twill, 5-end satin, or 4 ends, 2 intersections
      "endsMultiple"     | "sley": "2-0", "endsMultiple"   | plan.json, warp.sley: found '2-0', wanted ends in each dent such as 2 or 2-2-1, 1 to 20 of them
      "pieces"           | "reed": "", "pieces"            | plan.json, plan: found nothing, wanted the reed's name or its dents, or no reed at all
      "share": 0.2       | "strands": 2    | plan.json, warp.order[2]: found nothing, wanted either ends or share
      """, quoteCharacter = '\u0001')
  void aBadFieldIsNamedWithWhatIsWanted(String good, String bad, String message) {
    assertThatThrownBy(() -> PlanFile.read("plan.json", TOWELS.replace(good, bad))).isInstanceOf(BadInput.class).hasMessage(message);
  }

  /** 68 repeats of 8 make 544; with 8 selvedge ends of their own, 556 ends leave 548 for the order: 4 more of Chalk. */
  static final String STRIPES =
      TOWELS
          .replace("\"selvedgeEnds\": 0,", "\"ends\": 556, \"selvedgeEnds\": 8, \"selvedge\": {\"yarn\": \"Gorse\", \"colour\": \"Gold\", \"strands\": 2}, \"succession\": \"68 x (6 Chalk, 2 blue), 4 Chalk\",")
          .replace("\"share\": 0.8", "\"repairEnds\": 2")
          .replace("\"colour\": \"Woad\", \"share\": 0.2", "\"colour\": \"Woad\", \"mark\": \"blue\", \"oneLot\": \"yes\"")
          .replace("\"share\": 1}]", "\"mark\": \"ground\"}, {\"yarn\": \"Gorse\", \"colour\": \"Gold\", \"picks\": \"9/cm\", \"oneLot\": \"no\"}], \"weftSuccession\": \"there and back (20 ground, 2 Gold)\"");

  /** Counted by hand: 3303 picks are 78 repeats of 42 and 27 more: 20 of the ground, 2 of Gold, 5 of the ground. */
  @Test
  void aWrittenOrderIsReadWithItsMarksSelvedgesAndLots() throws BadInput {
    Plan plan = PlanFile.read("stripes.json", STRIPES);
    assertThat(Yardage.of(plan).needs()).extracting(need -> need.yarn().colour() + " " + need.threads() + " " + need.oneLot())
        .containsExactly("Chalk 414 false", "Woad 136 true", "Gold 8 false", "Chalk 3145 false", "Gold 158 false");
    assertThat(plan.weftSuccession().orElseThrow()).hasToString("there and back (20 ground, 2 Gold)");
  }

  @Test
  void unitsToTheLeftAndRightAreEndsToo() throws BadInput {
    String sections =
        TOWELS.replace("\"sett\": \"10/cm\",", "\"sett\": \"10/cm\", \"endsPerUnit\": 4, \"extendLeft\": 12, \"extendRight\": 9, \"sections\": [{\"name\": \"star\", \"repeats\": 3, \"units\": 36}],");
    assertThat(PlanFile.read("units.json", sections).warp().ends()).hasValue(516);
    assertThat(PlanFile.read("units.json", sections).warp().sections().orElseThrow().sections().getFirst().name()).isEqualTo("star");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      2 blue             | 2 Woad           | plan.json, warp.succession: found 'Woad', wanted one of the order's marks: Chalk, blue
      68 x (6 Chalk      | 68 x 6 (Chalk    | plan.json, warp.succession: found '6 (Chalk, 2 blue), 4…', wanted brackets round what comes 68 times, at character 6 of the order
      20 ground, 2 Gold) | 20 ground, 2 Gold | plan.json, weftSuccession: found nothing, wanted a comma or a closing bracket at character 34 of the order
      2 Gold             | 2 Silver         | plan.json, weftSuccession: found 'Silver', wanted one of the order's marks: ground, Gold
      "yes"              | "maybe"          | plan.json, warp.order[2].oneLot: found 'maybe', wanted yes or no
      "strands": 2       | "lots": 2        | plan.json, warp.selvedge.lots: found 'lots', wanted one of colour, strands, yarn
      "repairEnds": 2    | "ends": 400      | plan.json, warp.succession: found '400 ends of Chalk', wanted 412, as the written order makes: 12 too few
      "repairEnds": 2    | "ends": 412, "share": 0.5 | plan.json, warp.order[1]: found 'both ends and share', wanted either ends or share
      """, quoteCharacter = '\u0001')
  void aBadWrittenOrderIsNamedWithWhatIsWanted(String good, String bad, String message) {
    assertThatThrownBy(() -> PlanFile.read("plan.json", STRIPES.replace(good, bad))).isInstanceOf(BadInput.class).hasMessage(message);
  }

  @Test
  void aDraftKeepsAWrittenOrderAndItsFaultsAreToldAtTheirFields() {
    PlanDraft draft = PlanDraft.of(STRIPES);
    assertThat(draft.text(PlanField.of(PlanPart.SELVEDGE, "colour"))).isEqualTo("Gold");
    assertThat(draft.text(PlanField.of(PlanPart.WARP, "succession"))).isEqualTo("68 x (6 Chalk, 2 blue), 4 Chalk");
    assertThat(PlanDraft.of(draft.json())).isEqualTo(draft);
    assertThat(PlanFaults.of(draft)).isEmpty();
    PlanDraft broken = draft.with(PlanField.of(PlanPart.PLAN, "weftSuccession"), "2 x 3").with(PlanField.of(PlanPart.SELVEDGE, "strands"), "two");
    assertThat(PlanFaults.of(broken)).extracting(Fault::field).containsExactlyInAnyOrder("weftSuccession", "warp.selvedge.strands");
  }

  @Test
  void aPlanMaySayItsLoomReedWeaveAndSleying() throws BadInput {
    String dressed = TOWELS.replace("\"pieces\"", "\"loom\": \"Window loom\", \"reed\": \"12/in\", \"pieces\"").replace("\"endsMultiple\"", "\"weave\": \"2/2 Twill\", \"sley\": \"2-2-1\", \"endsMultiple\"");
    Dressing dressing = PlanFile.read("towels.json", dressed).dressing();
    assertThat(dressing).isEqualTo(new Dressing(Optional.of("Window loom"), Optional.of("12/in"), Optional.of(Weave.parse("2/2 twill")), Optional.of(Sley.parse("2-2-1"))));
    assertThat(PlanFile.read("draft", PlanDraft.of(dressed).json()).dressing()).isEqualTo(dressing);
    assertThat(PlanFile.read("towels.json", TOWELS).dressing()).isEqualTo(Dressing.UNSAID);
  }

  @Test
  void aRefusalTellsItsFieldApart() {
    assertThatThrownBy(() -> PlanFile.read("plan.json", TOWELS.replace("\"70 cm\"", "\"70\"")))
        .isInstanceOfSatisfying(
            BadInput.class,
            refused ->
                assertThat(refused.field())
                    .contains(new Fault("pieces[1].length", "70", "a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)")));
  }

  @Test
  void whatIsNoJsonIsRefusedWithItsLine() {
    assertThatThrownBy(() -> PlanFile.read("plan.json", "{\n\"format\": ")).isInstanceOf(BadInput.class).hasMessageStartingWith("plan.json, line 2: found no JSON");
  }
}
