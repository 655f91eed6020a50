package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Unreadable;
import hankbook.plan.Need.Role;
import hankbook.plan.Plan;
import hankbook.plan.Succession;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeavePlanTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");
  private static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");
  private static final YarnColour LINEN = new YarnColour("Holm 40/2", "Chalk");
  private static final WeaveColour WHITE = new WeaveColour(1, "#f4f1e8");
  private static final WeaveColour BLUE = new WeaveColour(2, "#2f5d8a");

  @Test
  void theOrderOfADraftIsTheOrderOfItsPlan() throws Exception {
    PlanDraft begun = WeavePlan.of(stripes(), "Stripes", chosen(CHALK, WOAD, CHALK, WOAD));
    assertThat(begun.text(PlanField.of(PlanPart.WARP, "ends"))).isEqualTo("96");
    assertThat(begun.text(PlanField.of(PlanPart.WARP, "sett"))).isEqualTo("24/in");
    assertThat(begun.text(PlanField.of(PlanPart.WARP, "succession"))).isEqualTo("12 x (6 Chalk, 2 Woad)");
    assertThat(begun.text(PlanField.of(PlanPart.PLAN, "weftSuccession"))).isEqualTo("14 Chalk, 2 Woad");
    assertThat(WeavePlan.wanting(begun)).containsExactly("pieces");
  }

  @Test
  void withItsPiecesEnteredThePlanCanBeReckoned() throws Exception {
    PlanDraft begun = WeavePlan.of(stripes(), "Stripes", chosen(CHALK, WOAD, CHALK, WOAD));
    DraftRow piece = DraftRow.BLANK.with("length", "1 m").with("width", "10 cm");
    Plan plan = PlanFile.read("plan.json", begun.withRow(PlanPart.PIECES, piece).json());
    Yardage yardage = Yardage.of(plan);
    assertThat(yardage.width().ends()).isEqualTo(96);
    assertThat(yardage.needs().stream().filter(need -> need.role() == Role.WARP)).extracting(need -> need.yarn() + " " + need.threads())
        .containsExactly("Skerry 16/2 Chalk 72", "Skerry 16/2 Woad 24");
  }

  @Test
  void yarnsOfOneColourNameAreMarkedByTheirWholeName() throws Exception {
    PlanDraft begun = WeavePlan.of(stripes(), "Stripes", chosen(CHALK, LINEN, CHALK, WOAD));
    assertThat(begun.text(PlanField.of(PlanPart.WARP, "succession"))).isEqualTo("12 x (6 Skerry 16/2 Chalk, 2 Holm 40/2 Chalk)");
    assertThat(begun.rows(PlanPart.ORDER)).extracting(row -> row.text("mark")).containsExactly("Skerry 16/2 Chalk", "Holm 40/2 Chalk");
    assertThat(begun.rows(PlanPart.WEFT)).extracting(row -> row.text("mark")).containsExactly("", "");
  }

  @Test
  void twoColoursInOneYarnAreOneAndNeedNoOrder() throws Exception {
    PlanDraft begun = WeavePlan.of(stripes(), "Plain", chosen(CHALK, CHALK, WOAD, WOAD));
    assertThat(begun.text(PlanField.of(PlanPart.WARP, "succession"))).isEmpty();
    assertThat(begun.rows(PlanPart.ORDER)).extracting(row -> row.text("ends")).containsExactly("96");
    assertThat(begun.rows(PlanPart.WEFT)).extracting(row -> row.text("share")).containsExactly("16/16");
  }

  @Test
  void whatADraftLeavesOutIsNamed() throws Exception {
    WeaveDraft bare = WeavingFile.read("bare.wif", Files.readAllBytes(WeavingFileTest.path("bare.wif")));
    PlanDraft begun = WeavePlan.of(bare, "Bare", Map.of(new WeaveUse(Role.WARP, WeaveColour.NONE), CHALK));
    assertThat(WeavePlan.wanting(begun)).containsExactly("pieces", "warp.sett", "weft");
    assertThat(WeavePlan.wanting(begun.withRow(PlanPart.WEFT, DraftRow.BLANK.with("yarn", "Loft"))).getLast()).isEqualTo("weft[1].picks");
  }

  @Test
  void aColourWithoutAYarnIsRefused() {
    assertThatThrownBy(() -> WeavePlan.of(stripes(), "Stripes", Map.of(new WeaveUse(Role.WARP, WHITE), CHALK)))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found nothing, wanted a yarn for #2f5d8a in the warp");
  }

  @Test
  void aFineWarpOfManyThreadsIsWrittenShortAndOneWithoutAnyOrderNotAtAll() {
    List<WeaveColour> pairs = IntStream.range(0, 20_000).mapToObj(end -> end % 2 == 0 ? WHITE : BLUE).toList();
    assertThat(WeaveOrder.of(new WeaveThreads(pairs, Optional.empty()), colour -> colour.equals(WHITE) ? "Chalk" : "Woad"))
        .map(Succession::toString).contains("10000 x (1 Chalk, 1 Woad)");
    List<WeaveColour> many = IntStream.range(0, 20_001).mapToObj(end -> new WeaveColour(end % 900, "")).toList();
    assertThat(WeaveOrder.of(new WeaveThreads(many, Optional.empty()), WeaveColour::toString)).isEmpty();
  }

  private static Map<WeaveUse, YarnColour> chosen(YarnColour warpWhite, YarnColour warpBlue, YarnColour weftWhite, YarnColour weftBlue) {
    return Map.of(
        new WeaveUse(Role.WARP, WHITE), warpWhite, new WeaveUse(Role.WARP, BLUE), warpBlue, new WeaveUse(Role.WEFT, WHITE), weftWhite, new WeaveUse(Role.WEFT, BLUE), weftBlue);
  }

  private static WeaveDraft stripes() throws IOException, BadInput {
    return WeavingFile.read("twill-stripes.wif", Files.readAllBytes(WeavingFileTest.path("twill-stripes.wif")));
  }
}
