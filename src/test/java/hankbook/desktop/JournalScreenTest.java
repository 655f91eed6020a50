package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.studio.Journal;
import hankbook.studio.NotDone;
import hankbook.studio.PartWith;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class JournalScreenTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    new PartWith(blank).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold at the fair");
  }

  @BeforeEach
  void goToTheJournal() {
    press(KeyCode.CONTROL, KeyCode.DIGIT3).release(KeyCode.DIGIT3, KeyCode.CONTROL);
    settle();
  }

  @Test
  void entriesStandNewestFirstAndAnswerToWordsOfTheNote() {
    TableView<?> entries = lookup("#entries").queryTableView();
    assertThat(((JournalRow) entries.getItems().getFirst()).what()).isEqualTo("Parted with");
    clickOn("#search-journal").write("fair S010");
    settle();
    assertThat(entries.getItems()).hasSize(1);
  }

  @Test
  void anEntryIsTakenBackWithItsReasonAndThenSaysSo() {
    choose("fair");
    assertThat(lookup("#take-back").query().isDisabled()).isTrue();
    clickOn("#reason").write("wrong skein");
    clickOn("#take-back");
    settle();
    assertThat(new Shelf(studio()).skein("S010").orElseThrow().free()).isEqualTo(Length.metres(950));
    assertThat(new Journal(studio()).newestFirst().getFirst().chained().entry().note()).isEqualTo("wrong skein");
    clickOn("#reason").write("again");
    settle();
    assertThat(lookup("#take-back").query().isDisabled()).isTrue();
    assertThat(lookup("Entry 58 is already taken back by 59. Take that one back to bring this one about again.").query().isVisible()).isTrue();
  }

  @Test
  void aRefusalIsSaidInPlaceAndTheReasonStays() {
    choose("S010 maker");
    clickOn("#reason").write("never came\n");
    settle();
    assertThat(textOf("#refusal")).startsWith("Not enough S010: the shelf holds 50 m");
    assertThat(textOf("#status")).endsWith("was not taken back.");
    assertThat(new Journal(studio()).newestFirst()).noneMatch(entry -> entry.chained().entry().kind() == EntryKind.REVERSAL);
  }

  @Test
  void whatAnotherProgramHasWrittenIsShownWhenNewsAreLookedFor() throws NotDone {
    TableView<?> entries = lookup("#entries").queryTableView();
    int before = entries.getItems().size();
    new PartWith(studio()).skein(UUID.randomUUID(), "S010", Length.metres(10), "given away");
    assertThat(entries.getItems()).hasSize(before);
    interact(home()::lookForNews);
    settle();
    assertThat(entries.getItems()).hasSize(before + 1);
  }

  @Test
  void ofWhatWasSaidBeforeTroublesAreMarked() {
    choose("S010 maker");
    clickOn("#reason").write("never came\n");
    settle();
    clickOn("#earlier");
    settle();
    assertThat(lookup(".said-trouble").queryLabeled().getText()).startsWith("Not done: Entry ");
  }

  @Test
  void turningToAScreenPutsTheKeyboardWhereItsThingsAreLookedFor() {
    assertThat(lookup("#search-journal").query().isFocused()).isTrue();
    press(KeyCode.CONTROL, KeyCode.DIGIT2).release(KeyCode.DIGIT2, KeyCode.CONTROL);
    settle();
    assertThat(lookup("#plan-list").query().isFocused()).isTrue();
    clickOn("#new-plan-name");
    press(KeyCode.CONTROL, KeyCode.F).release(KeyCode.F, KeyCode.CONTROL);
    settle();
    assertThat(lookup("#plan-list").query().isFocused()).isTrue();
  }

  private void choose(String words) {
    clickOn("#search-journal").write(words);
    settle();
    interact(() -> lookup("#entries").queryTableView().getSelectionModel().selectFirst());
    settle();
  }
}
