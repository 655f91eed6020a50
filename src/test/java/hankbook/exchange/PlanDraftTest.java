package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

  @Test
  void aRowIsMovedAndTheOthersCloseUp() {
    PlanDraft three = PlanDraft.BLANK;
    for (String mark : List.of("a", "b", "c")) {
      three = three.withRow(PlanPart.ORDER, DraftRow.BLANK.with("mark", mark));
    }
    assertThat(three.withRowMoved(PlanPart.ORDER, 1, 3).rows(PlanPart.ORDER)).extracting(row -> row.text("mark")).containsExactly("b", "c", "a");
    assertThat(three.withRowMoved(PlanPart.ORDER, 3, 2).rows(PlanPart.ORDER)).extracting(row -> row.text("mark")).containsExactly("a", "c", "b");
    assertThat(three.withRowMoved(PlanPart.ORDER, 2, 2)).isEqualTo(three);
  }

  @Test
  void anOrderThatDoesNotMakeTheEndsIsAtFaultWhereItIsWritten() {
    PlanField ends = PlanField.of(PlanPart.WARP, "ends");
    PlanField written = PlanField.of(PlanPart.WARP, "succession");
    PlanDraft plan =
        PlanDraft.BLANK
            .with(PlanField.of(PlanPart.PLAN, "name"), "stripes")
            .with(PlanField.of(PlanPart.WARP, "sett"), "10/cm")
            .with(PlanField.of(PlanPart.WARP, "length"), "2 m")
            .with(ends, "20")
            .with(written, "2 x (6 a, 2 b)")
            .withRow(PlanPart.ORDER, DraftRow.BLANK.with("yarn", "y").with("colour", "a"))
            .withRow(PlanPart.ORDER, DraftRow.BLANK.with("yarn", "y").with("colour", "b"));
    Fault wrong = new Fault("warp.succession", "16 ends in the order", "20 ends, as the warp has: 4 too few; 2 repeats make 16, 3 repeats make 24");
    assertThat(PlanFaults.of(plan)).containsExactly(wrong);
    assertThat(OrderedEnds.of(plan).orElseThrow().takeable()).hasValue(16);
    assertThat(OrderedEnds.of(plan.with(ends, "16"))).isEmpty();
    assertThat(PlanFaults.of(plan.with(ends, "16"))).isEmpty();
    assertThat(PlanFaults.of(plan.with(written, "2 x (6 a, 2 c)"))).extracting(Fault::field).containsExactly("warp.succession");
    assertThat(PlanFaults.of(plan.with(written, "2 x (6 a"))).extracting(Fault::field).containsExactly("warp.succession");
    PlanDraft counted = plan.with(written, "").with(new PlanField(PlanPart.ORDER, 1, "ends"), "6").with(new PlanField(PlanPart.ORDER, 2, "ends"), "2");
    assertThat(PlanFaults.of(counted)).extracting(Fault::field).containsExactly("warp.order");
    assertThat(OrderedEnds.of(counted).orElseThrow().takeable()).hasValue(8);
  }

  @Test
  void unitsAreAddedUpBeforeTheRestOfThePlanIsThere() {
    PlanDraft units =
        PlanDraft.BLANK.with(PlanField.of(PlanPart.WARP, "sett"), "10/cm").with(PlanField.of(PlanPart.WARP, "endsPerUnit"), "4")
            .withRow(PlanPart.SECTIONS, DraftRow.BLANK.with("repeats", "3").with("units", "36"));
    assertThat(DraftSections.sum(units).orElseThrow().ends()).isEqualTo(432);
    assertThat(DraftSections.sum(units.with(PlanField.of(PlanPart.WARP, "extendLeft"), "a few"))).isEmpty();
    assertThat(DraftSections.sum(PlanDraft.BLANK)).isEmpty();
  }
}
