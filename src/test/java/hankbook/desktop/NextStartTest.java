package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

class NextStartTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @Test
  void themeScreenAndOpenPlanAreAsTheyWereLeft() {
    chord(KeyCode.DIGIT2);
    interact(() -> home().open("Quay towels"));
    chord(KeyCode.DIGIT3);
    chord(KeyCode.T);
    startAgain();
    assertThat(scene().getStylesheets()).anyMatch(sheet -> sheet.endsWith("dark.css"));
    assertThat(lookup("#go-journal").queryAs(ToggleButton.class).isSelected()).isTrue();
    chord(KeyCode.DIGIT2);
    assertThat(lookup("#plan-name").queryAs(TextInputControl.class).getText()).isEqualTo("Quay towels");
  }

  @Test
  void aPlanThatIsGoneIsNotOpened() {
    remembered().put("plan", new LastPlan.Open(studio().address().text(), "Unravelled"));
    startAgain();
    chord(KeyCode.DIGIT2);
    assertThat(lookup("#plan-name").tryQueryAs(TextInputControl.class).map(TextInputControl::getText).orElse("")).isEmpty();
    assertThat(lookup("Unravelled").tryQuery()).isEmpty();
  }

  @Test
  void yarnOnOrderIsCountedAsItWasLeft() {
    chord(KeyCode.DIGIT4);
    clickOn("#count-on-order");
    settle();
    startAgain();
    chord(KeyCode.DIGIT4);
    assertThat(lookup("#count-on-order").queryAs(CheckBox.class).isSelected()).isTrue();
  }

  @Test
  void theShelfIsSortedAndItsColumnsStandAsTheyWereLeft() {
    interact(() -> {
      TableView<SkeinRow> skeins = lookup("#skeins").queryTableView();
      TableColumn<SkeinRow, ?> held = skeins.getColumns().get(7);
      held.setSortType(TableColumn.SortType.DESCENDING);
      skeins.getSortOrder().add(held);
    });
    settle();
    Object first = lookup("#skeins").queryTableView().getItems().getFirst();
    startAgain();
    TableView<SkeinRow> skeins = lookup("#skeins").queryTableView();
    assertThat(skeins.getSortOrder()).extracting(TableColumn::getText).containsExactly("Held");
    assertThat(skeins.getItems().getFirst().code()).isEqualTo(((SkeinRow) first).code());
  }

  @Test
  void whatIsHalfTypedStandsInTheNextWindowToo() {
    chord(KeyCode.DIGIT7);
    clickOn("#loom-name").write("Attic loom");
    clickOn("#reed-name").write("Fine reed");
    Map<String, Map<String, String>> typed = home().typed();
    assertThat(typed).containsEntry("loom", Map.of("name", "Attic loom")).containsEntry("reed", Map.of("name", "Fine reed")).doesNotContainKey("order");
    OrderingModel ordering = new OrderingModel(studio(), new Work(Runnable::run, Runnable::run), new Status(), List::of, () -> {});
    assertThat(ordering.typed()).isEmpty();
    ordering.type(Map.of("yarn", "Skerry 16/2", "due", "2031-05-01", "alike", "3"));
    assertThat(ordering.typed()).isEqualTo(Map.of("yarn", "Skerry 16/2", "due", "2031-05-01", "alike", "3"));
    startAgain(again -> again.follow(home()));
    chord(KeyCode.DIGIT7);
    assertThat(lookup("#loom-name").queryAs(TextInputControl.class).getText()).isEqualTo("Attic loom");
    assertThat(lookup("#reed-name").queryAs(TextInputControl.class).getText()).isEqualTo("Fine reed");
  }

  private void chord(KeyCode key) {
    press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
    settle();
  }

  private Scene scene() {
    return lookup("#go-shelf").query().getScene();
  }

  /** Another window over the same ledger, with what the first one left. */
  private void startAgain() {
    startAgain(_ -> {});
  }

  private void startAgain(Consumer<Home> first) {
    Work work = new Work(Runnable::run, Platform::runLater);
    interact(() -> {
      Scene scene = scene();
      Home again = new Home(studio(), work, work, new Status(), Remembered.of(remembered().json()).orElseThrow());
      first.accept(again);
      scene.setRoot(again.node());
      again.begin(scene, this::file);
    });
    settle();
  }
}
