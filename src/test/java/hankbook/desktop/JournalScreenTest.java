package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Setting;
import hankbook.measure.Length;
import hankbook.studio.Journal;
import hankbook.studio.NotDone;
import hankbook.studio.OnwardClock;
import hankbook.studio.PartWith;
import hankbook.studio.Reverse;
import hankbook.studio.SampleStudio;
import hankbook.studio.Settings;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.time.Clock;
import java.util.UUID;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class JournalScreenTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    new PartWith(blank).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold at the fair");
  }

  @Override
  Clock clock() {
    return new OnwardClock();
  }

  @BeforeEach
  void goToTheJournal() {
    press(KeyCode.CONTROL, KeyCode.DIGIT3).release(KeyCode.DIGIT3, KeyCode.CONTROL);
    settle();
  }

  @Test
  void entriesStandNewestFirstAndAnswerToWordsOfTheNote() {
    TableView<?> entries = lookup("#entries").queryTableView();
    assertThat(((JournalLine) entries.getItems().getFirst()).rowProperty().get().orElseThrow().what()).isEqualTo("Parted with");
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
  void beforeAnEntryIsTakenBackItIsSaidWhatThatWouldDoAndWhyItCannotBe() {
    choose("fair");
    assertThat(lookup("50.0 m → 950.0 m").query().isVisible()).isTrue();
    clickOn("#search-journal").eraseText(4);
    choose("S010 maker");
    clickOn("#reason").write("never came");
    settle();
    assertThat(lookup("#take-back").query().isDisabled()).isTrue();
    assertThat(lookup((Labeled label) -> label.getText() != null && label.getText().startsWith("Not enough S010: the shelf holds 50 m")).query().isVisible()).isTrue();
  }

  @Test
  void aRefusalIsSaidInPlaceAndTheReasonStays() throws NotDone {
    refused();
    assertThat(textOf("#refusal")).contains("has already been taken back");
    assertThat(textOf("#status")).endsWith("was not taken back.");
    assertThat(lookup("#reason").queryTextInputControl().getText()).isEqualTo("wrong skein");
    clickOn("#earlier");
    settle();
    assertThat(lookup(".said-trouble").queryLabeled().getText()).startsWith("Not done: Entry ");
  }

  /** Someone else takes it back just before. */
  private void refused() throws NotDone {
    choose("fair");
    new Reverse(studio()).numbered(UUID.randomUUID(), 58, "by someone else");
    clickOn("#reason").write("wrong skein\n");
    settle();
  }

  @Test
  void enterOpensWhatAnEntrySpeaksOfAndTheWayBackLeadsToTheEntry() {
    choose("fair");
    interact(() -> lookup("#entries").query().requestFocus());
    push(KeyCode.ENTER);
    settle();
    assertThat(lookup("#search-shelf").query().isVisible()).isTrue();
    assertThat(lookup(".side-page").query().isVisible()).isTrue();
    interact(() -> home().openEntry(58));
    settle();
    assertThat(textOf("#entry-headline")).startsWith("Entry 58: Parted with");
  }

  @Test
  void theLastActIsTakenBackByItsKeysAfterItWasShownWhatThatDoes() {
    interact(() -> lookup("#entries").query().requestFocus());
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    assertThat(textOf("#undo-words")).isEqualTo("Take back: parted with 900.0 m of S010 (entry 58, 2026-03-14)?");
    push(KeyCode.ESCAPE);
    settle();
    assertThat(lookup("#undo-bar").query().isVisible()).isFalse();
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    assertThat(textOf("#status")).isEqualTo("Took back: parted with 900.0 m of S010.");
    assertThat(new Shelf(studio()).skein("S010").orElseThrow().free()).isEqualTo(Length.metres(950));
    assertThat(lookup("#undo-bar").query().isVisible()).isFalse();
  }

  @Test
  void whatWasSaidLaterIsNamedFirstAndTheKeyboardLeavesTheEntryAlone() throws Exception {
    new Settings(studio()).set(Setting.REMNANT, "6 m");
    interact(() -> lookup("#entries").query().requestFocus());
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    assertThat(textOf("#undo-since")).isEqualTo("The setting Shortest useful remnant, which you changed since, stays as it is: the journal holds only yarn that moved.");
    assertThat(lookup("#undo-bar").queryAs(Pane.class).getChildren().getFirst()).isSameAs(lookup("#undo-since").query());
    assertThat(lookup("#undo-leave").query().isFocused()).isTrue();
    push(KeyCode.ESCAPE);
    settle();
    assertThat(lookup("#undo-bar").query().isVisible()).isFalse();
  }

  @Test
  void inAFieldTheKeysUndoWhatWasTypedAndNothingElse() {
    clickOn("#search-journal").write("f");
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    assertThat(lookup("#search-journal").queryTextInputControl().getText()).isEmpty();
    press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
    settle();
    assertThat(lookup("#undo-bar").query().isVisible()).isFalse();
  }

  @Test
  void anythingIsFoundByAFewLettersAndOpenedByTheKeyboardAlone() {
    press(KeyCode.CONTROL, KeyCode.K).release(KeyCode.K, KeyCode.CONTROL);
    settle();
    write("quay");
    settle();
    push(KeyCode.ENTER);
    settle();
    assertThat(lookup("#plan-list").query().isVisible()).isTrue();
    press(KeyCode.CONTROL, KeyCode.K).release(KeyCode.K, KeyCode.CONTROL);
    settle();
    write("58");
    settle();
    push(KeyCode.ENTER);
    settle();
    assertThat(textOf("#entry-headline")).startsWith("Entry 58: ");
    press(KeyCode.CONTROL, KeyCode.K).release(KeyCode.K, KeyCode.CONTROL);
    settle();
    push(KeyCode.ESCAPE);
    settle();
    assertThat(lookup("#find-pane").query().isVisible()).isFalse();
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
