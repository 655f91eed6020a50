package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.studio.NotDone;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

class ShelfScreenTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    try {
      new Reserve(blank).plan(UUID.randomUUID(), "Quay towels", false);
    } catch (BadInput broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Test
  void typingNarrowsTheShelfToSkeinsThatHoldEveryWord() {
    press(KeyCode.CONTROL, KeyCode.F).release(KeyCode.F, KeyCode.CONTROL);
    write("woad QUAY");
    settle();
    assertThat(textOf("#shelf-summary")).startsWith("1 of 58 skeins, ");
    eraseText(9);
    settle();
    assertThat(textOf("#shelf-summary")).startsWith("58 skeins, ");
  }

  @Test
  void measuringAgainCorrectsTheShelfAndLeavesWhatIsSetAside() {
    ShelfSkein before = new Shelf(studio()).skeins().stream().filter(skein -> !skein.allReserved().isZero()).findFirst().orElseThrow();
    String code = before.skein().code();
    choose(code);
    clickOn("#measure-again").clickOn("#recount-length").write("1700 m\n");
    settle();
    assertThat(skein(code).allReserved()).isEqualTo(before.allReserved());
    assertThat(skein(code).skein().holds()).isEqualTo(Length.metres(1700));
    assertThat(textOf("#status")).isEqualTo("Measured " + code + " again: 1\u202F700.0 m.");
  }

  @Test
  void partingWithMoreThanIsFreeIsRefusedBesideTheField() {
    choose("S016");
    clickOn("#part-with").clickOn("#part-length").write("2000 m");
    settle();
    assertThat(lookup("#part").query().isDisabled()).isTrue();
    assertThat(lookup("Only 960.0 m of it are free.").query().isVisible()).isTrue();
  }

  @Test
  void aSkeinIsReceivedByKeyboardAloneAndTheNextCodeIsProposed() {
    press(KeyCode.CONTROL, KeyCode.R).release(KeyCode.R, KeyCode.CONTROL);
    settle();
    assertThat(text("#receive-code")).isEqualTo("S059");
    press(KeyCode.TAB).release(KeyCode.TAB).press(KeyCode.TAB).release(KeyCode.TAB);
    write("Tussock\tPeat\t");
    settle();
    assertThat(text("#receive-grist")).isEqualTo("5.5 run");
    assertThat(text("#receive-hex")).isEqualTo("#4b3a2c");
    clickOn("#receive-gross").write("240 g\t40 g\n");
    settle();
    assertThat(skein("S059").free()).isEqualTo(skein("S037").free());
    assertThat(textOf("#status")).startsWith("Received S059, Tussock Peat, ");
    assertThat(text("#receive-code")).isEqualTo("S060");
  }

  @Test
  void aSecondClickReceivesNoSecondSkein() {
    clickOn("#open-receive");
    clickOn("#receive-yarn").write("Tussock").clickOn("#receive-colour").write("Peat").clickOn("#receive-length").write("100 m");
    clickOn("#receive");
    settle();
    assertThat(lookup("#receive").query().isDisabled()).isTrue();
    clickOn("#receive");
    settle();
    assertThat(new Shelf(studio()).skein("S059")).isPresent();
    assertThat(new Shelf(studio()).skein("S060")).isEmpty();
  }

  @Test
  void aLengthThatCannotBeReadStaysVisibleAndNothingIsReceived() {
    clickOn("#open-receive");
    clickOn("#receive-yarn").write("Tussock").clickOn("#receive-colour").write("Peat").clickOn("#receive-length").write("1,5 m\n");
    settle();
    assertThat(text("#receive-length")).isEqualTo("1,5 m");
    assertThat(lookup("#receive").query().isDisabled()).isTrue();
    assertThat(new Shelf(studio()).skein("S059")).isEmpty();
  }

  @Test
  void aQuestionThatNothingAnswersNamesTheWordAndWhatIsNotUnderstoodStandsBelow() {
    clickOn("#search-shelf").write("cotton puce >many");
    settle();
    assertThat(textOf("#shelf-nothing")).isEqualTo("No skein answers to “puce”.");
    assertThat(textOf("#shelf-faults")).startsWith(">many: wanted a length or a mass");
    clickOn("#shelf-all");
    settle();
    assertThat(textOf("#shelf-summary")).startsWith("58 skeins, ");
    assertThat(lookup("#shelf-nothing").query().getParent().isVisible()).isFalse();
  }

  @Test
  void byKeysAYarnIsOpenedToItsSkeinsAndFromTheWallToo() {
    interact(() -> lookup("#groups").queryTableView().getSelectionModel().selectFirst());
    TableView<ShelfLine> groups = lookup("#groups").queryTableView();
    int closed = groups.getItems().size();
    interact(groups::requestFocus);
    press(KeyCode.RIGHT).release(KeyCode.RIGHT).press(KeyCode.DOWN).release(KeyCode.DOWN);
    settle();
    assertThat(groups.getItems().size()).isGreaterThan(closed);
    assertThat(groups.getSelectionModel().getSelectedItem()).isInstanceOf(ShelfLine.OfSkein.class);
    assertThat(lookup("#measure-again").tryQuery()).isPresent();
    press(KeyCode.LEFT).release(KeyCode.LEFT);
    settle();
    assertThat(groups.getItems()).hasSize(closed);
    clickOn("#shelf-wall");
    settle();
    interact(() -> lookup(".wall-tile").queryAll().iterator().next().requestFocus());
    press(KeyCode.RIGHT).release(KeyCode.RIGHT).press(KeyCode.ENTER).release(KeyCode.ENTER);
    settle();
    assertThat(groups.isVisible()).isTrue();
    assertThat(groups.getSelectionModel().getSelectedItem()).isInstanceOfSatisfying(ShelfLine.OfGroup.class, line -> assertThat(line.row().openProperty().get()).isTrue());
    assertThat(remembered().get("shelf-look", String.class)).contains("GROUPS");
  }

  private void choose(String code) {
    clickOn("#search-shelf").write(code);
    settle();
    interact(() -> lookup("#skeins").queryTableView().getSelectionModel().selectFirst());
    settle();
  }

  private String text(String query) {
    return lookup(query).queryAs(TextInputControl.class).getText();
  }

  private ShelfSkein skein(String code) {
    return new Shelf(studio()).skein(code).orElseThrow();
  }
}
