package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PlanMove;
import hankbook.studio.Plans;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AheadModelTest {
  @TempDir
  Path dir;

  private final List<Runnable> waiting = new ArrayList<>();
  private final Status status = new Status();
  private Studio studio;
  private AheadModel model;

  @BeforeEach
  void openWithThreePlans() throws LedgerUnavailable, NotDone {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada");
    for (String name : List.of("Apron", "Band", "Cape")) {
      new Plans(studio).keep(name, "{}");
    }
    model = new AheadModel(studio, new Work(waiting::add, Runnable::run), status);
    model.refresh();
    doWhatWaits();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void aPlanThatIsMovedAgainBeforeTheAnswerGoesOnFromWhereItWouldStand() {
    model.choose("Cape");
    model.up();
    model.up();
    assertThat(model.triedProperty().get()).contains(new PlanMove("Cape", "Apron", true));
    assertThat(model.upAct().whyNotProperty().get()).isEqualTo("It is the first already.");
    assertThat(model.aheadProperty().get().names()).as("nothing is shown before it is reckoned").containsExactly("Apron", "Band", "Cape");
    doWhatWaits();
    assertThat(model.aheadProperty().get().names()).containsExactly("Cape", "Apron", "Band");
    assertThat(model.aheadProperty().get().kept()).containsExactly("Apron", "Band", "Cape");
  }

  @Test
  void aPlanThatIsMovedBackIsTriedNoMore() {
    model.choose("Band");
    model.down();
    model.up();
    assertThat(model.triedProperty().get()).isEmpty();
    doWhatWaits();
    assertThat(model.aheadProperty().get().names()).containsExactly("Apron", "Band", "Cape");
    assertThat(model.keepAct().isPossible()).isFalse();
  }

  @Test
  void aMoveWhosePlanIsGoneMeanwhileIsGivenUp() throws NotDone {
    model.choose("Cape");
    model.up();
    new Plans(studio).putAway("Cape");
    doWhatWaits();
    assertThat(status.lastProperty().get().text()).startsWith("There is no plan Cape in the ledger");
    assertThat(model.triedProperty().get()).isEmpty();
    assertThat(model.aheadProperty().get().names()).containsExactly("Apron", "Band");
    assertThat(model.chosenProperty().get()).isEmpty();
    assertThat(model.reckoningProperty().get()).isFalse();
  }

  @Test
  void aDoubleClickKeepsAnOrderOnce() {
    model.choose("Apron");
    model.down();
    doWhatWaits();
    model.keep();
    model.keep();
    doWhatWaits();
    assertThat(status.earlier()).extracting(Status.Said::text).containsExactly("Apron takes its yarn just after Band now.");
    assertThat(model.triedProperty().get()).isEmpty();
    assertThat(model.aheadProperty().get().kept()).containsExactly("Band", "Apron", "Cape");
  }

  private void doWhatWaits() {
    while (!waiting.isEmpty()) {
      List<Runnable> now = List.copyOf(waiting);
      waiting.clear();
      now.forEach(Runnable::run);
    }
  }
}
