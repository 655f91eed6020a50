package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.TreeView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The pages beside a plan's form, used as a weaver uses them. */
class PlanPagesTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  private void open(String plan, String page) {
    press(KeyCode.CONTROL, KeyCode.DIGIT2).release(KeyCode.DIGIT2, KeyCode.CONTROL);
    settle();
    clickOn(plan);
    settle();
    interact(() -> lookup("#plan-page-" + page).queryAs(ToggleButton.class).fire());
    settle();
  }

  private void type(String id, String text) {
    interact(() -> lookup("#" + id).query().requestFocus());
    write(text);
    settle();
  }

  @Test
  void theWindingSheetIsTriedWithTwoThreadsCopiedAndTakenIntoThePlan() {
    open("Quay towels", "winding");
    type("winding-threads", "2");
    assertThat(lookup("#winding-threads").query().isFocused()).isTrue();
    assertThat(lookup(".winding-skein").queryAll()).isNotEmpty();
    interact(() -> lookup("#winding-copy").queryButton().fire());
    assertThat(textOf("#winding-copied")).isEqualTo("The sheet is on the clipboard.");
    String copied = WaitForAsyncUtils.waitForAsyncFx(20_000, () -> Clipboard.getSystemClipboard().getString());
    assertThat(copied.lines().findFirst()).contains("Quay towels: winding sheet");
    interact(() -> lookup("#winding-take-threads").queryButton().fire());
    settle();
    assertThat(kept(PlanField.of(PlanPart.WINDING, "threads"))).isEqualTo("2");
    assertThat(lookup("#winding-take-threads").tryQuery()).isEmpty();
  }

  @Test
  void aShortPlanSaysWhatCanBeWoundOfIt() {
    open("Gorse shawl", "winding");
    assertThat(textOf(".winding-hindrance")).isEqualTo("301 ends have no skein on the shelf, so no skein is assigned yet; there is yarn for 255 ends.");
    assertThat(lookup(".winding-skein").lookup("S056").tryQuery()).isPresent();
  }

  @Test
  void aSettIsTriedSleyedAnotherWayAndTaken() {
    open("Quay towels", "sett");
    assertThat(lookup("#sett-take").queryButton().isDisabled()).isTrue();
    interact(() -> lookup("#sett-try-working").queryButton().fire());
    settle();
    assertThat(lookup("#sett-take").queryButton().isDisabled()).isFalse();
    interact(() -> lookup("#sett-tried").queryTextInputControl().setText("12/cm"));
    settle();
    RadioButton second = lookup(".sley-choices .radio-button").nth(1).queryAs(RadioButton.class);
    interact(second::requestFocus);
    interact(second::fire);
    settle();
    assertThat(second.isSelected()).isTrue();
    assertThat(second.isFocused()).isTrue();
    interact(() -> lookup("#sett-take-sleying").queryButton().fire());
    settle();
    assertThat(kept(PlanField.of(PlanPart.WARP, "sett"))).isEqualTo("12/cm");
    assertThat(kept(PlanField.of(PlanPart.WARP, "sley"))).isEqualTo("2-2-3-2-3");
    assertThat(kept(PlanField.of(PlanPart.PLAN, "reed"))).isEqualTo("50/10 cm");
  }

  @Test
  void aNumberIsAskedWithTheKeyboardSaysWhatItIsMadeOfAndGoesOnSayingItWhileThePlanIsTyped() {
    open("Quay towels", "cover");
    interact(() -> lookup("#why-warp-length").query().requestFocus());
    push(KeyCode.ENTER);
    TreeView<?> tree = lookup(".why-tree").queryAs(TreeView.class);
    assertThat(tree.getAccessibleText()).isEqualTo("How warp length is reckoned");
    assertThat(textOf(".why-formula")).isEqualTo("Its parts together.");
    int parts = tree.getRoot().getChildren().size();
    assertThat(lookup(".warp-entry").queryAll()).hasSize(parts);
    interact(tree::requestFocus);
    press(KeyCode.CONTROL, KeyCode.C).release(KeyCode.C, KeyCode.CONTROL);
    String copied = WaitForAsyncUtils.waitForAsyncFx(20_000, () -> Clipboard.getSystemClipboard().getString());
    assertThat(copied.lines().findFirst()).hasValueSatisfying(first -> assertThat(first).startsWith("warp length: ").endsWith(" (Its parts together.)"));
    interact(() -> lookup((TextField field) -> "pieces[1].count".equals(field.getId())).queryTextInputControl().setText("3"));
    settle();
    interact(() -> lookup(".why-tree").query().requestFocus());
    push(KeyCode.ESCAPE);
    assertThat(lookup(".why-tree").tryQuery()).isEmpty();
    assertThat(lookup("#why-warp-length").query().isFocused()).isTrue();
    push(KeyCode.ENTER);
    interact(() -> lookup(".why-close").query().requestFocus());
    push(KeyCode.ESCAPE);
    assertThat(lookup(".why-tree").tryQuery()).as("it is left from its buttons too").isEmpty();
    assertThat(lookup(".share-code").queryAll()).isNotEmpty();
  }

  private String kept(PlanField field) {
    return PlanDraft.of(new Plans(studio()).text("Quay towels").orElseThrow()).text(field);
  }
}
