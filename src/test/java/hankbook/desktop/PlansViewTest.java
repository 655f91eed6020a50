package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import atlantafx.base.theme.PrimerLight;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.store.LedgerAddress;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

/** The plans screen on a real ledger, used as a weaver uses it. */
@SuppressWarnings("NullAway.Init")
class PlansViewTest extends ApplicationTest {
  @TempDir private Path folder;
  /** A field that loses the focus as the window goes may still want to keep its text. */
  private final ExecutorService away = new ThreadPoolExecutor(2, 2, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), new ThreadPoolExecutor.DiscardPolicy());
  private Studio studio;
  private PlansModel model;

  @Override
  public void start(Stage stage) throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    SampleStudio.fill(studio);
    model = new PlansModel(new StudioPlanDesk(studio), new Work(away, Platform::runLater), () -> {});
    Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
    stage.setScene(new Scene(new PlansView(model), 1000, 900));
    stage.show();
    model.refresh();
  }

  @AfterEach
  void close() throws InterruptedException {
    away.shutdown();
    assertThat(away.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    studio.close();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> seen(condition::getAsBoolean));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** What the screen shows, looked at from its own thread, since it may be about to change. */
  private static <T> T seen(Callable<T> look) {
    return WaitForAsyncUtils.waitForAsyncFx(20_000, look);
  }

  private void open(String plan) throws TimeoutException {
    until(() -> lookup(plan).tryQuery().isPresent());
    clickOn(plan);
    until(() -> model.editor().nameProperty().get().equals(plan));
    until(this::reckoned);
  }

  private boolean reckoned() {
    return !model.editor().reckoningProperty().get();
  }

  private <T extends Node> T field(String path, Class<T> type) {
    return from(lookup(".plan-form").<Node>query()).lookup((Node node) -> path.equals(node.getId())).queryAs(type);
  }

  /** Puts a text in the place of what stands in a field, by typing. */
  private void type(String path, String text) {
    interact(() -> {
      Node field = field(path, Node.class);
      field.requestFocus();
      (field instanceof ComboBox<?> box ? box.getEditor() : (TextField) field).selectAll();
    });
    write(text);
  }

  private String verdict() {
    return lookup("#plan-verdict").queryAs(Labeled.class).getText();
  }

  private Button button(String id) {
    return lookup("#" + id).queryButton();
  }

  @Test
  void aPlanIsTypedWarnedAboutShortenedAndReserved() throws TimeoutException {
    clickOn("#new-plan-name").write("Moss scarf");
    clickOn("#new-plan");
    until(() -> model.editor().nameProperty().get().equals("Moss scarf"));
    until(() -> verdict().equals("unfinished"));
    type("pieces[1].count", "12");
    type("pieces[1].length", "180 cm");
    type("pieces[1].width", "40 cm");
    type("warp.sett", "10/cm");
    type("warp.order[1].yarn", "Skerry 16/2");
    type("warp.order[1].colour", "Moss");
    type("weft[1].yarn", "Skerry 16/2");
    type("weft[1].colour", "Moss");
    type("weft[1].picks", "9/cm");
    until(() -> verdict().equals("SHORT"));
    assertThat(seen(() -> button("plan-reserve").isDisabled())).isTrue();
    assertThat(seen(() -> lookup("#plan-hindrances").queryLabeled().getText())).contains("Reserve yarn: Skerry 16/2 Moss is short.");
    type("pieces[1].count", "1");
    until(() -> verdict().equals("COVERED"));
    clickOn("#plan-reserve");
    until(() -> lookup("#plan-said").queryLabeled().getText().startsWith("Reserved: "));
    until(() -> model.chosenProperty().get().orElseThrow().lifeProperty().get().word().equals("reserved"));
    assertThat(seen(() -> lookup(".plan-cell").lookup("reserved").tryQuery())).isPresent();
    assertThat(new Shelf(studio).skeins()).anySatisfy(skein -> assertThat(skein.reserved()).containsKey("Moss scarf"));
  }

  @Test
  void aTextThatCannotBeReadIsKeptWithAMessageBesideIt() throws TimeoutException {
    open("Quay towels");
    type("warp.sett", "ten or so");
    until(() -> verdict().equals("unfinished"));
    assertThat(seen(() -> from(field("warp.sett", Node.class).getParent()).lookup(".plan-field-message").queryLabeled().getText()))
        .isEqualTo("Wanted: threads to a length such as 10/cm or 24/in.");
    interact(() -> field("warp.ends", Node.class).requestFocus());
    until(() -> keptSett().equals("ten or so"));
    assertThat(seen(() -> field("warp.sett", TextField.class).getText())).isEqualTo("ten or so");
  }

  private String keptSett() {
    return PlanDraft.of(new Plans(studio).text("Quay towels").orElseThrow()).text(PlanField.of(PlanPart.WARP, "sett"));
  }

  @Test
  void aRowIsAddedToTheOrderAndAColourOfTheShelfChosenForIt() throws TimeoutException {
    open("Gorse shawl");
    interact(() -> field("add-warp.order", Button.class).fire());
    type("warp.order[2].yarn", "Fjara 2/20");
    ComboBox<?> colour = seen(() -> field("warp.order[2].colour", ComboBox.class));
    interact(colour::show);
    assertThat(colour.getItems()).hasToString("[Ash, Madder, Weld]");
    interact(() -> colour.getSelectionModel().select(1));
    interact(colour::hide);
    until(() -> model.editor().draftProperty().get().text(new PlanField(PlanPart.ORDER, 2, "colour")).equals("Madder"));
  }

  @Test
  void aRemedyOfAShortPlanIsTriedAndPutBack() throws TimeoutException {
    open("Linen runner");
    assertThat(seen(this::verdict)).isEqualTo("SHORT");
    until(() -> lookup("#try-shorterWarp").tryQuery().isPresent());
    interact(() -> button("try-shorterWarp").fire());
    until(() -> !verdict().equals("SHORT"));
    assertThat(seen(() -> field("warp.length", TextField.class).getText())).isEqualTo("5.2 m");
    interact(() -> button("put-back").fire());
    until(() -> verdict().equals("SHORT"));
    assertThat(seen(() -> field("warp.length", TextField.class).getText())).isEqualTo("5.22 m");
  }

  @Test
  void aPlanThatIsPutAwayLeavesNoPlanOpenAndSaysSo() throws TimeoutException {
    open("Linen runner");
    clickOn("#plan-put-away");
    until(() -> model.editor().nameProperty().get().isEmpty());
    assertThat(seen(() -> lookup(".plan-none").queryLabeled().getText())).isEqualTo("Put away: the plan is off the list. Choose a plan, or begin a new one.");
    assertThat(new Plans(studio).names()).doesNotContain("Linen runner");
  }

  @Test
  void aNameThatIsTakenIsRefusedBesideTheList() throws TimeoutException {
    until(() -> lookup("Quay towels").tryQuery().isPresent());
    clickOn("#new-plan-name").write("Quay towels\n");
    assertThat(seen(() -> lookup(".plan-none").queryLabeled().getText())).startsWith("There is a plan named Quay towels already.");
  }

  @Test
  void everyFieldIsReachedByTheTabulatorInReadingOrder() throws TimeoutException {
    open("Quay towels");
    interact(() -> field("pieces[1].name", Node.class).requestFocus());
    for (String key : PlanPart.PIECES.keys().subList(1, PlanPart.PIECES.keys().size())) {
      push(KeyCode.TAB);
      assertThat(seen(() -> field("pieces[1]." + key, Node.class).isFocused())).as(key).isTrue();
    }
  }

  @Test
  void aNameThatIsHalfTypedIsTakenWhenTheWindowIsClosed() throws TimeoutException {
    open("Quay towels");
    interact(() -> {
      lookup("#plan-name").queryAs(TextField.class).requestFocus();
      lookup("#plan-name").queryAs(TextField.class).setText("Harbour towels");
      assertThat(view().commit()).isTrue();
    });
    until(() -> model.editor().nameProperty().get().equals("Harbour towels"));
    assertThat(new Plans(studio).names()).contains("Harbour towels").doesNotContain("Quay towels");
  }

  private PlansView view() {
    return lookup(".plans").queryAs(PlansView.class);
  }

  @Test
  void aRowThatWasTakenAwayIsPutBackInItsPlace() throws TimeoutException {
    open("Quay towels");
    interact(() -> button("remove-pieces-1").fire());
    assertThat(seen(() -> lookup("Piece 1 was taken away.").tryQuery())).isPresent();
    interact(() -> button("put-back-row").fire());
    assertThat(seen(() -> field("pieces[1].count", TextField.class).getText())).isEqualTo("4");
    assertThat(seen(() -> lookup("#put-back-row").tryQuery())).isEmpty();
  }

  @Test
  void aConflictIsSaidAboveThePlanWithBothWaysOut() throws TimeoutException, NotDone {
    open("Quay towels");
    new Plans(studio).keep("Quay towels", PlanDraft.of(new Plans(studio).text("Quay towels").orElseThrow()).with(new PlanField(PlanPart.PIECES, 1, "count"), "2").json());
    type("pieces[1].count", "3");
    interact(() -> field("warp.sett", Node.class).requestFocus());
    until(() -> button("keep-mine").isVisible() && lookup("#plan-conflict").queryLabeled().isVisible() && !model.editor().keeping().conflictProperty().get().isEmpty());
    assertThat(seen(() -> field("pieces[1].count", TextField.class).getText())).isEqualTo("3");
    interact(() -> button("show-kept").fire());
    until(() -> field("pieces[1].count", TextField.class).getText().equals("2"));
    assertThat(seen(() -> button("show-kept").getParent().getParent().isVisible())).isFalse();
  }
}
