package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.DraftRow;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The picture of a plan's cloth and the sections tried beside it. */
class ClothPageTest extends ScreenTest {
  private static final String STRIPED = "Striped towels";
  private static final String UNITS = "Unit towels";

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    PlanDraft towels = PlanDraft.of(new Plans(blank).text("Quay towels").orElseThrow());
    PlanDraft shareless = towels.with(new PlanField(PlanPart.ORDER, 1, "share"), "").with(new PlanField(PlanPart.ORDER, 2, "share"), "");
    keep(blank, STRIPED, shareless.with(warp("succession"), "3 x (20 Chalk, 10 Woad), 20 Chalk").with(warp("ends"), "110"));
    DraftRow star = DraftRow.BLANK.with("name", "star").with("repeats", "3").with("units", "36");
    keep(blank, UNITS, towels.with(warp("endsPerUnit"), "4").withRow(PlanPart.SECTIONS, star));
  }

  private static PlanField warp(String key) {
    return PlanField.of(PlanPart.WARP, key);
  }

  private static void keep(Studio studio, String name, PlanDraft draft) throws NotDone {
    new Plans(studio).keep(name, draft.with(PlanField.of(PlanPart.PLAN, "name"), name).json());
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> WaitForAsyncUtils.waitForAsyncFx(20_000, condition::getAsBoolean));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void cloth(String plan) throws TimeoutException {
    push(KeyCode.CONTROL, KeyCode.DIGIT2);
    until(() -> lookup(plan).tryQuery().isPresent());
    clickOn(plan);
    until(() -> lookup("#plan-page-cloth").tryQuery().isPresent());
    interact(() -> lookup("#plan-page-cloth").queryAs(ToggleButton.class).fire());
    until(() -> lookup("#whole-cloth").tryQuery().isPresent());
  }

  @Test
  void theWarpIsDrawnStripeByStripeAsItsOrderIsWritten() throws TimeoutException {
    cloth(STRIPED);
    Node strip = lookup((Node node) -> node instanceof BandStrip && node.isVisible() && node.getAccessibleText().startsWith("3 times")).query();
    assertThat(strip.getAccessibleText()).isEqualTo("3 times: 20 Chalk, 10 Woad; then 20 Chalk.");
    Image drawn = from(strip).lookup((Node node) -> node instanceof ImageView).<ImageView>query().getImage();
    int width = (int) drawn.getWidth();
    boolean[] dark = new boolean[width];
    IntStream.range(0, width).forEach(x -> dark[x] = drawn.getPixelReader().getColor(x, 1).getBrightness() < 0.7);
    assertThat(IntStream.range(1, width).filter(x -> dark[x] && !dark[x - 1]).count()).isEqualTo(3);
    assertThat(IntStream.range(0, width).filter(x -> dark[x]).count() / (double) width).isBetween(0.25, 0.3);
    Color first = drawn.getPixelReader().getColor(0, 1);
    assertThat(first.getBrightness()).isGreaterThan(0.8);
  }

  @Test
  void theCloserLookIsMovedByKeys() throws TimeoutException {
    cloth(STRIPED);
    assertThat(textOf("#cloth-place")).startsWith("Ends 1 to 32 of 110, picks 1 to ");
    interact(() -> lookup("#whole-cloth").query().requestFocus());
    push(KeyCode.RIGHT).push(KeyCode.RIGHT).push(KeyCode.LEFT).push(KeyCode.PAGE_DOWN);
    assertThat(textOf("#cloth-place")).startsWith("Ends 2 to 33 of 110, picks 28 to ");
    push(KeyCode.END);
    assertThat(textOf("#cloth-place")).startsWith("Ends 79 to 110 of 110, ");
    assertThat(lookup("#whole-cloth").query().getAccessibleText()).contains("3 times: 20 Chalk, 10 Woad; then 20 Chalk.");
  }

  @Test
  void aSectionIsTriedInAnotherFormAndKeptOnlyWhenAsked() throws TimeoutException {
    cloth(UNITS);
    assertThat(lookup("#keep-section").queryButton().isDisabled()).isTrue();
    interact(() -> lookup("#try-units-more").queryButton().fire());
    assertThat(lookup("#section-change").queryAs(Labeled.class).getText())
        .startsWith("(3 x 37) x 4 = 444 ends.").contains("Ends +12, in the reed +1.2 cm, finished +1 cm.").contains("Skerry 16/2 Chalk +");
    assertThat(field("warp.sections[1].units").getText()).isEqualTo("36");
    interact(() -> lookup("#keep-section").queryButton().fire());
    assertThat(field("warp.sections[1].units").getText()).isEqualTo("37");
    until(() -> lookup("#keep-section").queryButton().isDisabled());
    interact(() -> lookup("#try-units").queryAs(TextField.class).setText("many"));
    assertThat(lookup("#section-change").queryAs(Labeled.class).getText()).startsWith("Wanted: ");
    assertThat(lookup("#keep-section").queryButton().isDisabled()).isTrue();
  }

  private TextField field(String path) {
    return lookup((Node node) -> path.equals(node.getId())).queryAs(TextField.class);
  }
}
