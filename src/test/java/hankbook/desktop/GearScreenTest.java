package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.Reeds;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.util.List;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class GearScreenTest extends ScreenTest {
  private static final String PLAN = "Scarf";

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    new Plans(blank).keep(
        PLAN,
        "{\"format\": \"hankbook-plan/1\", \"name\": \"Scarf\", \"pieces\": [], \"weft\": [], \"loom\": \"Lap loom\", \"warp\": {\"sett\": \"10/cm\", \"ends\": 400,"
            + " \"length\": \"2 m\", \"order\": [{\"yarn\": \"Skerry 16/2\", \"colour\": \"Woad\", \"ends\": 400}]}}");
  }

  @BeforeEach
  void goToTheLooms() {
    press(KeyCode.CONTROL, KeyCode.DIGIT7).release(KeyCode.DIGIT7, KeyCode.CONTROL);
    settle();
  }

  @Test
  void aLoomIsEnteredAndThePlanThatNamesItIsWarnedUntilItIsWideEnough() {
    assertThat(lookup("#looms").queryTableView().getItems()).as("the sample studio's").hasSize(2);
    type("#loom-name", "Lap loom");
    type("#loom-width", "30 cm");
    type("#loom-waste", "20");
    type("#loom-shafts", "4");
    assertThat(lookup("#enter-loom").query().isDisabled()).isTrue();
    assertThat(lookup("#loom-waste").queryAs(TextField.class).getText()).as("what cannot be read stays").isEqualTo("20");
    clickOn("#loom-waste").press(KeyCode.END).release(KeyCode.END).write(" cm\n");
    settle();
    assertThat(new Looms(studio()).all()).contains(new Loom("Lap loom", Length.parse("30 cm"), Length.parse("20 cm"), 4));
    assertThat(warnings()).anyMatch(text -> text.contains("Lap loom") && text.contains("40 cm"));

    goToTheLooms();
    interact(() -> lookup("#looms").queryTableView().getSelectionModel().selectFirst());
    settle();
    assertThat(textOf("#enter-loom")).isEqualTo("Change loom");
    type("#loom-width", "50 cm");
    clickOn("#enter-loom");
    settle();
    assertThat(textOf("#status")).isEqualTo("Changed the loom Lap loom.");
    assertThat(warnings()).noneMatch(text -> text.contains("40 cm"));
  }

  @Test
  void aReedIsCalledByItsDentsAndPutAwayAgain() {
    clickOn("#reed-dents").write("8/in\n");
    settle();
    assertThat(new Reeds(studio()).all()).anyMatch(reed -> reed.name().equals("8/in") && reed.width().isEmpty());
    interact(() -> lookup("#reeds").queryTableView().getSelectionModel().selectLast());
    settle();
    String name = lookup("#reed-name").queryAs(TextField.class).getText();
    clickOn("#put-away-reed");
    settle();
    assertThat(new Reeds(studio()).all()).hasSize(3).noneMatch(reed -> reed.name().equals(name));
    assertThat(lookup("#put-away-reed").query().getParent().isVisible()).isFalse();
  }

  private void type(String field, String text) {
    interact(() -> lookup(field).queryAs(TextField.class).setText(text));
    settle();
  }

  private List<String> warnings() {
    interact(() -> home().open(PLAN));
    settle();
    return lookup(".plan-warning").queryAllAs(Labeled.class).stream().map(Labeled::getText).toList();
  }
}
