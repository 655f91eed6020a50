package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A draft that was drawn elsewhere becomes a plan. */
class DraftScreenTest extends ScreenTest {
  private static final String BEGIN = "#draft-begin";

  private Path draft = Path.of("imports/heron-scarf.wif");

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @Override
  Optional<Path> file() {
    return Optional.of(draft);
  }

  @Test
  void aDraftIsLookedAtItsYarnsAreChosenAndItsPlanIsOpened() throws TimeoutException {
    bringIn();
    assertThat(lookup((Node node) -> node instanceof Label label && label.getText().startsWith("180 ends, 12/cm as the draft spaces them: ")).tryQuery()).isPresent();
    assertThat(lookup(".draft-proposed").queryAll()).hasSize(6);
    assertThat(lookup(BEGIN).query().isDisabled()).isTrue();
    ComboBox<DraftYarn> red = lookup("#draft-warp-B").queryComboBox();
    assertThat(red.getValue().yarn()).hasToString("Fjara 2/20 Madder");
    interact(() -> red.setValue(red.getItems().stream().filter(yarn -> yarn.yarn().toString().equals("Fjara 2/20 Ash")).findFirst().orElseThrow()));
    assertThat(lookup(".draft-proposed").queryAll()).hasSize(5);
    assertThat(lookup("Take or choose a yarn for 5 colours more.").query().isVisible()).isTrue();
    clickOn("#draft-take-all").clickOn(BEGIN);
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> lookup("#plan-verdict").tryQuery().isPresent() && textOf("#plan-verdict").equals("unfinished"));
    PlanDraft plan = PlanDraft.of(new Plans(studio()).text("Heron scarf").orElseThrow());
    assertThat(plan.text(PlanField.of(PlanPart.WARP, "ends"))).isEqualTo("180");
    assertThat(plan.rows(PlanPart.ORDER)).extracting(row -> row.text("colour")).contains("Ash").doesNotContain("Madder");
    assertThat(plan.rows(PlanPart.WEFT)).extracting(row -> row.text("colour")).contains("Madder");
    assertThat(plan.rows(PlanPart.PIECES)).hasSize(1);
    assertThat(lookup("#plan-list").queryListView().getSelectionModel().getSelectedItem()).extracting(row -> ((PlanRow) row).name()).isEqualTo("Heron scarf");
    assertThat(lookup(BEGIN).tryQuery().filter(Node::isVisible).map(node -> Objects.requireNonNull(node.getParent()).getParent().isVisible())).isNotEqualTo(Optional.of(true));
  }

  @Test
  void oneYarnAloneCanBeProposedFrom() {
    bringIn();
    ComboBox<String> only = lookup("#draft-only").queryComboBox();
    interact(() -> only.setValue("Skerry 16/2"));
    settle();
    ComboBox<DraftYarn> grey = lookup("#draft-warp-A").queryComboBox();
    assertThat(grey.getItems()).extracting(yarn -> yarn.yarn().yarn()).containsOnly("Skerry 16/2", "Yarn to choose");
    assertThat(lookup(".draft-proposed").queryAll()).hasSize(6);
  }

  @Test
  void whatIsWrongWithAFileIsToldByItsLinesAndNothingIsBegun() throws IOException {
    draft = Files.writeString(dir.resolve("torn.wif"), "[WIF]\nVersion=1.1\n[WARP]\nThreads=many\n");
    bringIn();
    ListView<?> faults = lookup("#draft-faults").queryListView();
    assertThat(faults.getItems()).hasSize(1);
    assertThat(faults.getItems().getFirst().toString()).contains("line 4").doesNotContain("torn.wif").contains("many");
    assertThat(lookup(BEGIN).queryAll().stream().filter(node -> node.getParent().getParent().isVisible())).isEmpty();
    clickOn("#draft-close");
    assertThat(new Plans(studio()).names()).doesNotContain("torn");
  }

  private void bringIn() {
    clickOn("#go-plans").clickOn("#from-draft");
    settle();
  }
}
