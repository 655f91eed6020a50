package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What the guide says is done as it says it, in one window from a blank book on, and every picture of it is taken on the way. */
class GuidePicturesTest extends ScreenTest {
  private static final int COLOURS = 40;

  private final GuidePictures pictures = new GuidePictures();

  @Override
  String ledger() {
    return "sample studio";
  }

  @Test
  void everyPictureOfTheGuideIsTakenWhileItsTasksAreDoneAsItSays() throws IOException {
    begin();
    findYarn();
    lookAtASkein();
    receive();
    plan();
    askWhatIsShort();
    compare();
    reserve();
    lookAhead();
    finish();
    lookBack();
    setUp();
    assertThat(pictures.taken()).isEqualTo(GuidePictures.shown());
  }

  private void begin() {
    take("welcome");
    clickOn("#begin-sample");
    settle();
  }

  private void findYarn() {
    type("search-shelf", "cotton >200 m");
    interact(() -> lookup("#groups").queryTableView().getSelectionModel().selectFirst());
    interact(() -> lookup("#groups").query().requestFocus());
    push(KeyCode.RIGHT);
    settle();
    take("find");
    type("search-shelf", "");
    press("shelf-wall");
    interact(() -> lookup("#shelf-order").queryComboBox().getSelectionModel().select(2));
    settle();
    take("wall");
  }

  private void lookAtASkein() {
    press("shelf-skeins");
    type("search-shelf", "skerry");
    interact(() -> {
      TableView<SkeinRow> skeins = lookup("#skeins").queryTableView();
      skeins.getItems().stream().filter(row -> row.code().equals("S005")).findFirst().ifPresent(skeins.getSelectionModel()::select);
    });
    settle();
    take("skein");
    open("wind-off");
    type("wind-length", "200 m");
    type("wind-code", "S005b");
    take("wind-off");
  }

  private void receive() {
    turnTo(KeyCode.R);
    type("receive-yarn", "Tussock");
    type("receive-colour", "Peat");
    type("receive-count", "3");
    type("receive-gross", "102 g, 99 g, 101 g");
    type("receive-tare", "4 g");
    type("receive-lot", "B7");
    take("receive");
  }

  private void plan() {
    choosePlan("Quay towels");
    take("plan");
    press("why-warp-length");
    take("explain");
    press("plan-page-cloth");
    take("cloth");
    press("plan-page-cost");
    type("cost-part", "40 %");
    take("plan-cost");
    press("plan-page-cover");
  }

  private void askWhatIsShort() {
    choosePlan("Linen runner");
    take("short");
  }

  private void compare() {
    choosePlan("Quay towels");
    press("plan-beside");
    type("beside-a-width", "60 cm");
    take("compare");
    press("beside-close");
  }

  private void reserve() {
    choosePlan("Quay towels");
    press("plan-reserve");
    take("reserve");
  }

  private void lookAhead() {
    turnTo(KeyCode.DIGIT4);
    take("ahead");
  }

  private void finish() {
    choosePlan("Quay towels");
    press("plan-draw");
    turnTo(KeyCode.DIGIT5);
    push(KeyCode.SPACE);
    settle();
    press("left-by-used-up-S001");
    press("left-by-used-up-S002");
    take("after-form");
    take("after");
  }

  private void lookBack() {
    turnTo(KeyCode.DIGIT3);
    interact(() -> lookup("#entries").queryTableView().getSelectionModel().selectFirst());
    settle();
    take("journal");
  }

  private void setUp() {
    turnTo(KeyCode.DIGIT7);
    take("looms");
    turnTo(KeyCode.DIGIT8);
    take("yours");
  }

  private void choosePlan(String name) {
    turnTo(KeyCode.DIGIT2);
    interact(() -> {
      ListView<PlanRow> list = lookup("#plan-list").queryListView();
      list.getItems().stream().filter(row -> row.name().equals(name)).findFirst().ifPresent(list.getSelectionModel()::select);
    });
    settle();
  }

  private void turnTo(KeyCode key) {
    press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
    settle();
  }

  private void press(String id) {
    interact(() -> lookup((Node node) -> id.equals(node.getId())).queryAs(ButtonBase.class).fire());
    settle();
  }

  private void open(String id) {
    interact(() -> lookup((Node node) -> id.equals(node.getId())).queryAs(TitledPane.class).setExpanded(true));
    settle();
  }

  private void type(String id, String text) {
    interact(() -> {
      Node found = lookup((Node node) -> id.equals(node.getId())).query();
      TextInputControl field = found instanceof ComboBox<?> box ? box.getEditor() : (TextInputControl) found;
      field.requestFocus();
      field.setText(text);
    });
    settle();
  }

  private void take(String name) {
    Scene scene = window(0).getScene();
    BufferedImage picture = WaitForAsyncUtils.waitForAsyncFx(20_000, () -> pictures.take(name, scene));
    assertThat(picture.getWidth()).as(name).isEqualTo((int) width());
    assertThat(GuidePictures.colours(picture)).as("colours of " + name).isGreaterThan(COLOURS);
  }
}
