package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanDraftTest {
  @ParameterizedTest
  @ValueSource(strings = {"ash-blanket.json", "gorse-shawl.json", "linen-runner.json", "quay-towels.json"})
  void aDraftOfASamplePlanMeansTheSamePlan(String file) throws IOException, BadInput {
    String text = Files.readString(Path.of("imports", file));
    PlanDraft draft = PlanDraft.of(text);
    assertThat(PlanFile.read(file, draft.json())).isEqualTo(PlanFile.read(file, text));
    assertThat(PlanDraft.of(draft.json())).isEqualTo(draft);
  }

  @Test
  void numbersAreReadAsTheTextsTheyWereWrittenIn() {
    PlanDraft draft = PlanDraft.of(PlanFileTest.TOWELS);
    assertThat(draft.text(new PlanField(PlanPart.ORDER, 2, "share"))).isEqualTo("0.2");
    assertThat(draft.text(PlanField.of(PlanPart.ALLOWANCES, "repairEnds"))).isEqualTo("0");
  }

  @Test
  void aTextThatCannotBeReadYetIsKept() {
    PlanField sett = PlanField.of(PlanPart.WARP, "sett");
    PlanDraft draft = PlanDraft.of(PlanFileTest.TOWELS).with(sett, "ten or so");
    assertThat(PlanDraft.of(draft.json()).text(sett)).isEqualTo("ten or so");
  }

  @Test
  void aRowCanBeAddedAndTakenAway() {
    PlanDraft draft = PlanDraft.of(PlanFileTest.TOWELS);
    PlanDraft longer = draft.withRow(PlanPart.ORDER, DraftRow.BLANK.with("yarn", "Gorse"));
    assertThat(longer.text(new PlanField(PlanPart.ORDER, 3, "yarn"))).isEqualTo("Gorse");
    assertThat(longer.withoutRow(PlanPart.ORDER, 3)).isEqualTo(draft);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "not JSON", "[]", "7", "null", "{\"pieces\": 3, \"warp\": [], \"colour\": {}}"})
  void whatIsNoPlanGivesABlankDraft(String text) {
    assertThat(PlanDraft.of(text)).isEqualTo(PlanDraft.BLANK);
  }

  @Test
  void aRowOfAGroupThatIsNoListIsRefused() {
    assertThatThrownBy(() -> new PlanField(PlanPart.WARP, 2, "sett")).hasMessage("row of WARP is 2, wanted 1");
    assertThatThrownBy(() -> PlanField.of(PlanPart.WARP, "sheen")).hasMessageStartingWith("key in WARP is \"sheen\", wanted one of sett, ");
    assertThatThrownBy(() -> PlanDraft.BLANK.withRow(PlanPart.WARP, DraftRow.BLANK)).hasMessage("WARP has 2 rows, wanted exactly one");
  }
}
