package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.studio.Draw;
import hankbook.studio.FinishList;
import hankbook.studio.FinishedPlans;
import hankbook.studio.Journal;
import hankbook.studio.JournalEntry;
import hankbook.studio.NotDone;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.util.List;
import java.util.UUID;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The sample studio with its towels on the loom: 1600 m of S001 and S002 each, 803.1 m of S003, 518.4 m of S005. */
class AfterScreenTest extends ScreenTest {
  private static final String TOWELS = "Quay towels";

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    try {
      new Reserve(blank).plan(UUID.randomUUID(), TOWELS, false);
      new Draw(blank).plan(UUID.randomUUID(), TOWELS);
    } catch (BadInput broken) {
      throw new IllegalStateException(broken);
    }
  }

  private void openTheForm() {
    push(KeyCode.CONTROL, KeyCode.DIGIT5);
    settle();
    push(KeyCode.SPACE);
    settle();
  }

  @Test
  void aClothIsCutOffItsFormFilledByKeyboardTheBookSquaredAndTakenBack() {
    openTheForm();
    assertThat(textOf("#after-title")).isEqualTo("Cut off: Quay towels");
    assertThat(square().isDisabled()).isTrue();
    assertThat(lookup("Still to be said in step 1: what is left of S001, S002, S003, S005.").query().isVisible()).isTrue();
    leaveNothing("S001");
    leaveNothing("S002");
    leaveLength("S003", 3, left("S003", "20 m"));
    leaveLength("S005", 4, left("S005", "0 m"));
    assertThat(textOf("#reading-S003")).isEqualTo("816.9 m left, 783.1 m used.");
    type("warp.length", "5.5 m");
    type("warp.loomWaste", "55 cm");
    type("cloth.lengthOffLoom", "3.9 m");
    type("cloth.lengthFinished", "3.6 m");
    type("thrums[1].amount", "14 g");
    type("hours.weaving", "9:30");
    assertThat(lookup("#came-length-shrinkage").queryLabeled().getText()).isEqualTo("7.69 %");
    giveAReasonWhereOneIsWanted();
    assertThat(square().isDisabled()).isFalse();
    interact(square()::requestFocus);
    push(KeyCode.SPACE);
    settle();
    assertThat(textOf("#status")).startsWith("Squared the book of Quay towels: 4\u202F501.5 m used, 20.0 m back on the shelf; its loom is empty.");
    assertThat(textOf("#squared-title")).isEqualTo("Quay towels, squared");
    assertThat(textOf("#went-used")).isEqualTo("4\u202F501.5 m");
    assertThat(textOf("#cause-used")).isEqualTo("4\u202F501.5 m");
    assertThat(kinds()).startsWith(EntryKind.WOVEN, EntryKind.WASTE, EntryKind.RETURN, EntryKind.DRAW);
    assertThat(FinishList.of(studio()).squared()).extracting(FinishList.Closed::plan).containsExactly(TOWELS);
    push(KeyCode.CONTROL, KeyCode.DIGIT3);
    settle();
    assertThat(lookup("#entries").<JournalLine>queryTableView().getItems()).extracting(line -> line.rowProperty().get().map(JournalRow::what).orElse("")).startsWith("Woven", "Loom waste", "Returned", "Drawn");
    push(KeyCode.CONTROL, KeyCode.DIGIT5);
    settle();

    clickOn("#ask-take-back");
    type("back-reason", "S003 was weighed with its cone");
    interact(lookup("#take-back-finish").queryButton()::fire);
    settle();
    assertThat(kinds()).startsWith(EntryKind.REVERSAL, EntryKind.REVERSAL, EntryKind.REVERSAL, EntryKind.WOVEN);
    assertThat(textOf("#after-title")).isEqualTo("Cut off: Quay towels");
    assertThat(field("warp.length").getText()).as("what was found stays in its form").isEqualTo("5.5 m");
    assertThat(lookup("#reading-S003").queryLabeled().getText()).isEqualTo("816.9 m left, 783.1 m used.");
  }

  @Test
  void whatIsFilledInIsThereAgainAfterAnotherScreenAndWhenTheWindowCloses() {
    openTheForm();
    type("warp.ends", "not yet");
    type("found-note", "the reed was rusty");
    push(KeyCode.CONTROL, KeyCode.DIGIT2);
    settle();
    push(KeyCode.CONTROL, KeyCode.DIGIT5);
    settle();
    assertThat(field("warp.ends").getText()).as("bad text stays").isEqualTo("not yet");
    assertThat(lookup("Wanted: a whole number, or arithmetic that makes one, such as (3 x 36 + 12) x 4.").query().isVisible()).isTrue();
    interact(() -> field("cloth.picks").setText("1400"));
    boolean[] kept = new boolean[1];
    interact(() -> home().keep(all -> kept[0] = all));
    settle();
    assertThat(kept[0]).isTrue();
    assertThat(new FinishedPlans(studio()).draft(TOWELS).orElseThrow().text(ActualsPart.CLOTH, 1, "picks")).isEqualTo("1400");
    assertThat(new FinishedPlans(studio()).draft(TOWELS).orElseThrow().text(ActualsPart.ACTUALS, 1, "note")).isEqualTo("the reed was rusty");
    assertThat(this.<AfterRow>list().getItems().getFirst().words()).endsWith("on the loom, begun to be filled in");
  }

  @Test
  void theFormIsGoneThroughWithTheTabulatorAndNothingMovesWhileOneTypes() {
    openTheForm();
    interact(field("leftovers[4].gross")::requestFocus);
    settle();
    Node card = lookup("#reading-S005").query().getParent();
    double before = card.localToScene(card.getBoundsInLocal()).getMinY();
    double height = card.getBoundsInLocal().getHeight();
    write("1 cm");
    settle();
    assertThat(textOf("#reading-S005")).isEqualTo("Wanted: a mass such as 100 g (mg, g, kg, oz or lb).");
    interact(() -> field("leftovers[4].gross").setText("170 g"));
    assertThat(textOf("#reading-S005")).startsWith("1\u202F788.2 m left, 0.0 m used; ");
    assertThat(card.localToScene(card.getBoundsInLocal()).getMinY()).isEqualTo(before);
    assertThat(card.getBoundsInLocal().getHeight()).isEqualTo(height);
    push(KeyCode.TAB);
    assertThat(field("leftovers[4].tare").isFocused()).isTrue();
    interact(field("warp.length")::requestFocus);
    write("4.7 m");
    push(KeyCode.TAB);
    settle();
    assertThat(field("warp.ends").isFocused()).isTrue();
    interact(field("found-note")::requestFocus);
    push(KeyCode.TAB);
    assertThat(field("found-note").isFocused()).as("also out of a note of more lines").isFalse();
  }

  @Test
  void aSkeinThatWasTouchedByMistakeIsAddedAndTakenOutAgain() {
    openTheForm();
    interact(() -> lookup("#other-skein").queryComboBox().getSelectionModel().selectFirst());
    interact(lookup("#add-skein").queryButton()::fire);
    settle();
    String code = new FinishedPlans(studio()).draft(TOWELS).orElseThrow().text(ActualsPart.LEFTOVERS, 5, "skein");
    assertThat(lookup("#reading-" + code).query().isVisible()).isTrue();
    interact(lookup("#take-out-" + code).queryButton()::fire);
    settle();
    assertThat(lookup("#reading-" + code).tryQuery()).isEmpty();
  }

  @Test
  void aPlanThatIsFinishedAgainShowsWhatWasFoundAndAsksForTheReason() {
    openTheForm();
    leaveNothing("S001");
    leaveNothing("S002");
    leaveLength("S003", 3, left("S003", "20 m"));
    leaveLength("S005", 4, left("S005", "0 m"));
    giveAReasonWhereOneIsWanted();
    interact(square()::fire);
    settle();
    interact(lookup("#finish-again").queryButton()::fire);
    settle();
    assertThat(textOf("#after-title")).isEqualTo("Finish again: Quay towels");
    assertThat(lookup("Say why it is finished again.").query().isVisible()).isTrue();
    type("leftovers[3].left", "800 m");
    type("why-again", "a slip of the pen");
    giveAReasonWhereOneIsWanted();
    interact(square()::fire);
    settle();
    assertThat(textOf("#went-used")).isEqualTo("4\u202F518.4 m");
    assertThat(new FinishedPlans(studio()).named(TOWELS).orElseThrow().reason()).isEqualTo("a slip of the pen");
  }

  /** What a skein measures where so much of it comes back from the loom. */
  private String left(String code, String back) {
    return new Shelf(studio()).skein(code).orElseThrow().free().plus(Length.parse(back)).toString();
  }

  private void giveAReasonWhereOneIsWanted() {
    if (field("found-reason").getParent().isVisible()) {
      type("found-reason", "tried on a new balance");
    }
  }

  private void leaveNothing(String code) {
    ButtonBase usedUp = lookup("#left-by-used-up-" + code).queryAs(ButtonBase.class);
    interact(usedUp::requestFocus);
    push(KeyCode.SPACE);
    settle();
  }

  private void leaveLength(String code, int row, String length) {
    ButtonBase byLength = lookup("#left-by-length-" + code).queryAs(ButtonBase.class);
    interact(byLength::requestFocus);
    push(KeyCode.SPACE);
    settle();
    type("leftovers[" + row + "].left", length);
  }

  private TextInputControl field(String id) {
    return (TextInputControl) lookup((Node node) -> id.equals(node.getId()) && node instanceof TextInputControl).query();
  }

  private void type(String id, String text) {
    TextInputControl field = field(id);
    interact(field::requestFocus);
    interact(field::selectAll);
    write(text);
    push(KeyCode.TAB);
    settle();
  }

  private ButtonBase square() {
    return lookup("#square").queryAs(ButtonBase.class);
  }

  private <T> ListView<T> list() {
    return lookup("#after-list").queryListView();
  }

  private List<EntryKind> kinds() {
    return new Journal(studio()).newestFirst().stream().map(JournalEntry::chained).map(chained -> chained.entry().kind()).toList();
  }
}
