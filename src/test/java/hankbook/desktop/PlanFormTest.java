package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

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
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What a plan's form has for orders, units and gear, used as a weaver uses it. */
class PlanFormTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> WaitForAsyncUtils.waitForAsyncFx(20_000, condition::getAsBoolean));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void open(String plan) throws TimeoutException {
    push(KeyCode.CONTROL, KeyCode.DIGIT2);
    until(() -> lookup(plan).tryQuery().isPresent());
    clickOn(plan);
    until(() -> lookup("#plan-name").tryQueryAs(TextField.class).filter(name -> name.getText().equals(plan)).isPresent());
    settle();
  }

  private Node field(String path) {
    return lookup((Node node) -> path.equals(node.getId())).query();
  }

  private void type(String path, String text) {
    Node field = field(path);
    interact(() -> {
      field.requestFocus();
      (field instanceof ComboBox<?> box ? box.getEditor() : (TextField) field).selectAll();
    });
    write(text);
  }

  private String text(String path) {
    return ((TextField) field(path)).getText();
  }

  private void press(String id) {
    interact(() -> lookup((Node node) -> id.equals(node.getId())).queryButton().fire());
    settle();
  }

  private String verdict() {
    return textOf("#plan-verdict");
  }

  private boolean seen(String path) {
    return field(path).getParent().isVisible();
  }

  private String beside(String path) {
    return from(field(path).getParent()).lookup(".plan-field-message").queryLabeled().getText();
  }

  @Test
  void aStripedOrderIsTypedReadBackAndTheWarpTakesItsEnds() throws TimeoutException {
    open("Quay towels");
    assertThat(seen("warp.order[1].mark")).isFalse();
    press("more-order");
    assertThat(seen("warp.order[1].mark")).isTrue();
    for (int row = 1; row <= 2; row++) {
      type("warp.order[" + row + "].share", "\b");
      type("warp.order[" + row + "].ends", "\b");
      type("warp.order[" + row + "].mark", row == 1 ? "ground" : "line");
    }
    type("warp.succession", "12 x (6 ground, 2 lime), 6 ground");
    until(() -> beside("warp.succession").equals("Wanted: one of the order's marks: ground, line."));
    type("warp.succession", "12 x (6 ground, 2 line), 6 ground");
    assertThat(((Labeled) field("warp.succession-words")).getText()).isEqualTo("12 times: 6 ground, 2 line; then 6 ground. 102 ends, 78 ground and 24 line.");
    until(() -> beside("warp.succession").contains("as the warp has: "));
    assertThat(verdict()).isEqualTo("unfinished");
    press("ends-from-order");
    until(() -> verdict().equals("COVERED"));
    assertThat(text("warp.ends")).isEqualTo("102");
    assertThat(lookup("#ends-from-order").query().isVisible()).isFalse();
    interact(() -> lookup("#plan-page-cloth").queryAs(ToggleButton.class).fire());
    assertThat(lookup(".cloth-words").<Labeled>queryAll()).extracting(Labeled::getText).contains("12 times: 6 ground, 2 line; then 6 ground.");
    assertThat(lookup("Skerry 16/2 Woad 24 ends").tryQuery()).isPresent();
  }

  @Test
  void aRowOfTheOrderIsMovedByKeyboardAndByButton() throws TimeoutException {
    open("Quay towels");
    String first = row(1);
    String second = row(2);
    interact(() -> field("warp.order[1].colour").requestFocus());
    push(KeyCode.CONTROL, KeyCode.DOWN);
    assertThat(row(2)).isEqualTo(first);
    assertThat(row(1)).isEqualTo(second);
    assertThat(field("warp.order[2].colour").isFocused()).isTrue();
    push(KeyCode.CONTROL, KeyCode.DOWN);
    press("up-warp.order-2");
    until(() -> PlanDraft.of(new Plans(studio()).text("Quay towels").orElseThrow()).text(new PlanField(PlanPart.ORDER, 1, "colour")).equals(first));
  }

  private String row(int row) {
    return ((ComboBox<?>) field("warp.order[" + row + "].colour")).getEditor().getText();
  }

  @Test
  void whatIsFoldedAwayOpensWhereItIsAtFaultAndIsRememberedWhereItWasOpened() throws TimeoutException, NotDone {
    PlanDraft towels = PlanDraft.of(new Plans(studio()).text("Quay towels").orElseThrow());
    new Plans(studio()).keep("Odd towels", towels.with(PlanField.of(PlanPart.ALLOWANCES, "gap"), "a hand").with(PlanField.of(PlanPart.PLAN, "name"), "Odd towels").json());
    open("Odd towels");
    until(() -> verdict().equals("unfinished"));
    assertThat(field("allowances.gap").getParent().getParent().isVisible()).isTrue();
    assertThat(beside("allowances.gap")).startsWith("Wanted: a length");
    press("more-warp");
    open("Quay towels");
    assertThat(field("warp.selvedge.yarn").getParent().getParent().getParent().isVisible()).isTrue();
    assertThat(field("allowances.gap").getParent().getParent().isVisible()).isFalse();
  }

  @Test
  void endsCountedInUnitsAreAddedUpBothWaysAsTheyAreTyped() throws TimeoutException {
    open("Quay towels");
    press("more-units");
    type("warp.endsPerUnit", "4");
    press("add-warp.sections");
    type("warp.sections[1].repeats", "3");
    type("warp.sections[1].units", "36");
    type("warp.extendLeft", "12");
    type("warp.extendRight", "9");
    assertThat(lookup("#section-arithmetic").queryAs(Labeled.class).getText()).startsWith("(12 + 3 x 36 + 9) x 4").endsWith("= 516 ends");
  }

  @Test
  void anOwnedLoomCanBeChosen() throws TimeoutException {
    open("Quay towels");
    ComboBox<?> loom = (ComboBox<?>) field("loom");
    interact(() -> {
      loom.getOnShowing().handle(new Event(ComboBoxBase.ON_SHOWING));
      loom.getSelectionModel().select(1);
    });
    assertThat(loom.getItems()).hasToString("[Table loom, Window loom]");
    assertThat(loom.getEditor().getText()).isEqualTo("Window loom");
  }
}
