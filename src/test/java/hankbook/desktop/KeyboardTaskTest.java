package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.studio.CheckPlan;
import hankbook.studio.Journal;
import hankbook.studio.Plans;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The main job from a blank book with the keyboard alone, as it must go for whoever cannot or will not hold a mouse. */
class KeyboardTaskTest extends ScreenTest {
  /** More steps than the longest form has. */
  private static final int FAR = 90;

  @Test
  void aBlankBookReceivesALotIsPlannedReservedReadAndTakenBackWithoutAMouse() throws TimeoutException, BadInput {
    until(() -> focusId().equals("begin-file"));
    tabTo("begin-blank");
    tap(KeyCode.ENTER);
    receiveTheLot();
    writeThePlan();
    until(() -> textOf("#plan-verdict").equals("COVERED"));
    tabTo("plan-reserve");
    tap(KeyCode.ENTER);
    until(() -> textOf("#plan-said").startsWith("Reserved: "));
    Length need = new CheckPlan(studio()).named("Reed scarf").check().covers().getFirst().need();
    assertThat(reserved()).isEqualTo(need);
    assertThat(new Plans(studio()).names()).containsExactly("Reed scarf");
    find("journal");
    until(() -> focusId().equals("search-journal") && entries() > 0);
    int before = entries();
    assertThat(newest()).isEqualTo(EntryKind.RESERVE);
    tabTo("entries");
    tap(KeyCode.DOWN);
    chord(KeyCode.Z);
    until(() -> focusId().equals("undo-take"));
    tap(KeyCode.ENTER);
    until(() -> entries() == before + 1);
    assertThat(newest()).isEqualTo(EntryKind.REVERSAL);
    assertThat(reserved()).isEqualTo(Length.ZERO);
  }

  private void receiveTheLot() throws TimeoutException {
    chord(KeyCode.R);
    until(() -> focusId().equals("receive-code"));
    typeInto("receive-yarn", "Heron 8/2");
    typeInto("receive-colour", "Reed");
    typeInto("receive-length", "550 m");
    typeInto("receive-lot", "007");
    tabTo("receive-count");
    tap(KeyCode.UP);
    tap(KeyCode.UP);
    tabTo("receive");
    tap(KeyCode.ENTER);
    until(() -> skeins() == 3);
  }

  private void writeThePlan() throws TimeoutException {
    find("plans");
    until(() -> focusId().equals("plan-list"));
    tabTo("new-plan-name");
    write("Reed scarf");
    tap(KeyCode.ENTER);
    until(() -> focusId().equals("pieces[1].name"));
    write("scarf");
    typeInto("pieces[1].length", "1.8 m");
    typeInto("pieces[1].width", "20 cm");
    typeInto("warp.sett", "8/cm");
    typeInto("warp.order[1].yarn", "Heron 8/2");
    typeInto("warp.order[1].colour", "Reed");
    typeInto("weft[1].yarn", "Heron 8/2");
    typeInto("weft[1].colour", "Reed");
    typeInto("weft[1].picks", "7/cm");
  }

  private void find(String words) throws TimeoutException {
    chord(KeyCode.K);
    until(() -> focusId().equals("find-anything"));
    write(words);
    settle();
    tap(KeyCode.ENTER);
    settle();
  }

  private void typeInto(String id, String text) {
    tabTo(id);
    chord(KeyCode.A);
    write(text);
    settle();
  }

  /** Goes on from field to field until the one with that id has the keyboard. */
  private void tabTo(String id) {
    settle();
    for (int step = 0; step < FAR && !focusId().equals(id); step++) {
      tap(KeyCode.TAB);
      settle();
    }
    assertThat(focusId()).as("where the keyboard is after many steps on").isEqualTo(id);
  }

  private void tap(KeyCode key) {
    press(key).release(key);
  }

  private void chord(KeyCode key) {
    press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
    settle();
  }

  /** The id of the node that has the keyboard, or of the one around it that has an id. */
  private String focusId() {
    Node at = home().node().getScene().getFocusOwner();
    while (at != null && at.getId() == null) {
      at = at.getParent();
    }
    return at == null ? "" : at.getId();
  }

  private int entries() {
    return lookup("#entries").queryTableView().getItems().size();
  }

  private int skeins() {
    return new Shelf(studio()).skeins().size();
  }

  private Length reserved() {
    return new Shelf(studio()).skeins().stream().map(ShelfSkein::allReserved).reduce(Length.ZERO, Length::plus);
  }

  private EntryKind newest() {
    return new Journal(studio()).newestFirst().getFirst().chained().entry().kind();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, condition::getAsBoolean);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
