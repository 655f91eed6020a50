package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.studio.CheckPlan;
import hankbook.studio.Journal;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The main job from a blank book, in the whole window. */
class WholeTaskTest extends ScreenTest {
  @Test
  void aBlankBookReceivesAPlanIsWarnedTheWarpIsShortenedAndItsYarnReserved() throws TimeoutException, BadInput {
    clickOn("#go-plans").clickOn("#go-shelf").clickOn("#ways-in");
    clickOn("#begin-blank");
    receive("Heron 8/2", "Reed");
    receive("Heron 8/2", "Reed");
    press(KeyCode.CONTROL, KeyCode.DIGIT2).release(KeyCode.DIGIT2, KeyCode.CONTROL);
    clickOn("#new-plan-name").write("Reed scarf");
    clickOn("#new-plan");
    until(() -> verdict().equals("unfinished"));
    type("warp.sett", "8/cm");
    type("warp.ends", "200");
    type("warp.length", "6 m");
    type("warp.order[1].yarn", "Heron 8/2");
    type("warp.order[1].colour", "Reed");
    type("weft[1].yarn", "Heron 8/2");
    type("weft[1].colour", "Reed");
    type("weft[1].picks", "7/cm");
    type("weft[1].length", "2 m");
    interact(() -> lookup("#remove-pieces-1").queryButton().fire());
    until(() -> verdict().equals("SHORT"));
    assertThat(lookup("#plan-reserve").queryButton().isDisabled()).isTrue();
    type("warp.length", "2.5 m");
    until(() -> verdict().equals("COVERED"));
    clickOn("#plan-reserve");
    until(() -> lookup("#plan-said").queryLabeled().getText().startsWith("Reserved: "));
    Length need = new CheckPlan(studio()).named("Reed scarf").check().covers().getFirst().need();
    assertThat(new Shelf(studio()).skeins().stream().map(ShelfSkein::allReserved).reduce(Length.ZERO, Length::plus)).isEqualTo(need);
    press(KeyCode.CONTROL, KeyCode.DIGIT3).release(KeyCode.DIGIT3, KeyCode.CONTROL);
    until(() -> lookup("#entries").queryTableView().getItems().size() == 3);
    assertThat(new Journal(studio()).newestFirst().getFirst().chained().entry().kind()).isEqualTo(EntryKind.RESERVE);
  }

  private void receive(String yarn, String colour) {
    press(KeyCode.CONTROL, KeyCode.R).release(KeyCode.R, KeyCode.CONTROL);
    settle();
    type("receive-yarn", yarn);
    type("receive-colour", colour);
    type("receive-length", "550 m");
    clickOn("#receive");
    settle();
  }

  private void type(String path, String text) {
    Node field = lookup((Node node) -> path.equals(node.getId())).query();
    interact(field::requestFocus);
    TextField typedIn = field instanceof ComboBox<?> box ? box.getEditor() : (TextField) field;
    interact(typedIn::selectAll);
    write(text);
  }

  private String verdict() {
    return textOf("#plan-verdict");
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, condition::getAsBoolean);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
