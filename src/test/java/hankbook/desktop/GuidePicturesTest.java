package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** What the guide says is done as it says it, in one window from a blank book on, and every picture of it is taken on the way. */
class GuidePicturesTest extends PicturedTest {
  private static final String TOWELS = "Quay towels";

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
    writeAnOrder();
    askWhatIsShort();
    compare();
    reserve();
    lookBack();
    lookAhead();
    finish();
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
    chooseSkein("S005");
    take("skein");
    unfold("wind-off");
    type("wind-length", "200 m");
    type("wind-code", "S005b");
    take("wind-off", ".side-page");
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
    choosePlan(TOWELS);
    take("plan");
    leaveToTheFirst("plan-split", 0.3);
    press("why-warp-length");
    take("explain", ".plan-answer-side");
    push(KeyCode.ESCAPE);
    press("plan-page-cost");
    type("cost-part", "40 %");
    scrollTo("#cost-total");
    take("plan-cost", ".plan-answer-side");
    press("plan-page-cover");
  }

  private void writeAnOrder() {
    press("plan-duplicate");
    type("warp.order[1].share", "");
    type("warp.order[2].share", "");
    type("warp.succession", "12 x (38 Chalk, 8 Woad), 4 Chalk");
    press("plan-page-cloth");
    take("cloth", ".plan-answer-side");
    press("plan-page-cover");
    press("plan-put-away");
  }

  private void askWhatIsShort() {
    choosePlan("Linen runner");
    scrollTo("#try-shorterWarp");
    take("short", ".plan-answer-side");
  }

  private void compare() {
    choosePlan(TOWELS);
    press("plan-beside");
    type("beside-a-width", "60 cm");
    take("compare");
    press("beside-close");
  }

  private void reserve() {
    press("plan-reserve");
    scrollTo(".share-code");
    take("reserve", ".plan-answer-side");
  }

  private void lookAhead() {
    turnTo(KeyCode.DIGIT4);
    press("open-order");
    type("order-yarn", "Gorse");
    type("order-colour", "Gold");
    type("order-length", "500 m");
    type("order-alike", "4");
    type("order-due", "2026-05-01");
    press("put-on-order");
    push(KeyCode.ESCAPE);
    settle();
    take("ahead");
  }

  private void finish() {
    choosePlan(TOWELS);
    press("plan-wind");
    turnTo(KeyCode.DIGIT5);
    push(KeyCode.SPACE);
    settle();
    press("left-by-used-up-S001");
    left("S002", 2, "31 m");
    left("S003", 3, "768 m");
    left("S005", 4, "198 m");
    Map.of("thrums[1].amount", "372 m", "warp.length", "4.67 m", "warp.ends", "556", "warp.broken", "2", "warp.loomWaste", "67 cm", "warp.sampling", "28 cm", "warp.widthInReed", "55.5 cm")
        .forEach(this::type);
    Map.of("cloth.lengthOnLoom", "3.52 m", "cloth.lengthOffLoom", "3.42 m", "cloth.lengthFinished", "3.14 m", "cloth.widthFinished", "47.5 cm", "cloth.picks", "3290", "hours.weaving", "9:30")
        .forEach(this::type);
    type("found-reason", "the sample was not measured");
    take("after-form");
    press("square");
    take("after");
  }

  private void left(String code, int row, String length) {
    press("left-by-length-" + code);
    type("leftovers[" + row + "].left", length);
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
}
