package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.reckon.Finding;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Where three finished scarves show what they taught. */
class LearntScreenTest extends ScreenTest {
  private Optional<Path> chosen = Optional.empty();

  @Override
  void fill(Studio blank) throws NotDone {
    FinishedScarves.fill(blank);
  }

  @Override
  Optional<Path> file() {
    return chosen;
  }

  private void go(KeyCode digit) {
    push(KeyCode.CONTROL, digit);
    settle();
  }

  private Node node(String id) {
    return lookup((Node node) -> id.equals(node.getId())).query();
  }

  private void press(String id) {
    interact(() -> node(id).requestFocus());
    push(KeyCode.SPACE);
    settle();
  }

  @Test
  void anOfferIsUsedByKeyboardAndTakenBackByTyping() {
    interact(() -> home().open(FinishedScarves.NEXT));
    settle();
    assertThat(textOf("#offer-loomWaste")).isEqualTo("Loom waste: learnt 70\u00A0cm, from 3 plans on Window loom, 60.1\u00A0cm to 79.9\u00A0cm");
    TextField waste = (TextField) node("allowances.loomWaste");
    assertThat(waste.getText()).isEqualTo("1 m");
    assertThat(node("use-loomWaste").getAccessibleText()).isEqualTo("Use 70 cm for loom waste");
    press("use-loomWaste");
    assertThat(waste.getText()).isEqualTo("70 cm");
    assertThat(waste.isFocused()).isTrue();
    assertThat(node("use-loomWaste").isVisible()).isFalse();
    assertThat(lookup("as learnt").<Node>queryAll()).anyMatch(Node::isVisible);
    interact(waste::selectAll);
    write("1 m");
    settle();
    assertThat(node("use-loomWaste").isVisible()).isTrue();
    assertThat(waste.isFocused()).isTrue();
  }

  @Test
  void aLoomTakesOverWhatItWasFoundToWaste() {
    go(KeyCode.DIGIT7);
    assertThat(lookup("70 cm from 3 plans").tryQuery()).isPresent();
    interact(() -> lookup("#looms").queryTableView().getSelectionModel().selectLast());
    press("take-over-Window-loom");
    assertThat(textOf("#status")).isEqualTo("Changed the loom Window loom to what was learnt.");
    assertThat(new Looms(studio()).all()).filteredOn(loom -> loom.name().equals("Window loom")).extracting(Loom::waste).containsExactly(Length.parse("70 cm"));
    assertThat(((TextField) node("loom-waste")).getText()).as("its form follows").isEqualTo("70 cm");
    assertThat(lookup("#take-over-Window-loom").tryQuery()).isEmpty();
  }

  @Test
  void whatWasLearntIsATableOfTheClothsThatAreChosen() {
    go(KeyCode.DIGIT5);
    press("what-was-learnt");
    assertThat(textOf("#learnt-said")).startsWith("From 3 finished plans.");
    assertThat(lookup("#learnt-findings").<Finding>queryTableView().getItems()).extracting(LearntWords::range).contains("60.1 cm to 79.9 cm");
    assertThat(lookup("on Window loom").tryQuery()).isPresent();
    ComboBox<Optional<String>> looms = lookup("#learnt-loom").queryComboBox();
    interact(() -> looms.setValue(Optional.of("Window loom")));
    assertThat(lookup("#learnt-findings").<Finding>queryTableView().getItems()).allSatisfy(finding -> assertThat(finding.group().loom()).contains("Window loom"));
    interact(() -> lookup("#after-list").queryListView().requestFocus());
    push(KeyCode.SPACE);
    settle();
    assertThat(node("learnt-findings").getParent().isVisible()).isFalse();
    assertThat(textOf("#squared-title")).endsWith(", squared");
  }

  @Test
  void theRecordOfASquaredPlanIsSavedOnceUnderAName() throws IOException {
    go(KeyCode.DIGIT5);
    push(KeyCode.SPACE);
    settle();
    press("save-record");
    assertThat(textOf("#status")).as("nobody chose a file").isEmpty();
    Path file = dir.resolve("record.pdf");
    Files.deleteIfExists(file);
    chosen = Optional.of(file);
    press("save-record");
    assertThat(textOf("#status")).startsWith("Saved the record of ").endsWith(" as " + file + ".");
    assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    press("save-record");
    assertThat(textOf("#status")).isEqualTo(file + ": found a file here already, wanted a name that is free");
  }
}
