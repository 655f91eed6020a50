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
