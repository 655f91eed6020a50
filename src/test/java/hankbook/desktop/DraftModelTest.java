package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.Studio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A draft over a blank ledger, whose answers come when they are told to. */
class DraftModelTest {
  private static final Path SCARF = Path.of("imports/heron-scarf.wif");

  @TempDir
  Path dir;

  private final List<Runnable> waiting = new ArrayList<>();
  private final List<String> begun = new ArrayList<>();
  private Studio studio;
  private DraftModel drafts;

  @BeforeEach
  void open() throws LedgerUnavailable {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada");
    drafts = new DraftModel(studio, new Work(Runnable::run, waiting::add), List::of, begun::add);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void onlyTheDraftThatWasChosenLastIsShown() throws IOException {
    drafts.read(SCARF);
    drafts.read(Files.writeString(dir.resolve("two ends.wif"), "[WARP]\nThreads=2\n"));
    doWhatWaits();
    assertThat(drafts.fileProperty().get()).isEqualTo("two ends.wif");
    assertThat(drafts.nameProperty().get()).isEqualTo("two ends");
    assertThat(drafts.choices()).hasSize(1);
  }

  @Test
  void aDraftThatWasLeftWhileItWasReadStaysLeft() {
    drafts.read(SCARF);
    drafts.close();
    doWhatWaits();
    assertThat(drafts.openProperty().get()).isFalse();
    assertThat(drafts.previewProperty().get()).isEmpty();
  }

  @Test
  void onAnEmptyShelfAPlanIsBegunWhoseYarnsAreChosenLater() {
    drafts.read(SCARF);
    doWhatWaits();
    assertThat(drafts.choices()).hasSize(6).allMatch(choice -> choice.yarnProperty().get().name().equals("none of these, choose later"));
    drafts.takeAll();
    drafts.begin();
    doWhatWaits();
    assertThat(begun).containsExactly("Heron scarf");
    assertThat(new Plans(studio).text("Heron scarf").orElseThrow()).contains("Yarn to choose");
  }

  @Test
  void aNameThatAnotherTookMeanwhileIsToldAndTheDraftStays() throws NotDone {
    drafts.read(SCARF);
    doWhatWaits();
    drafts.takeAll();
    new Plans(studio).keep("Heron scarf", "{}");
    drafts.begin();
    doWhatWaits();
    assertThat(drafts.troubleProperty().get()).isEqualTo("There is a plan Heron scarf already; give this one another name.");
    assertThat(drafts.openProperty().get()).isTrue();
    drafts.nameProperty().set("Heron scarf in grey");
    drafts.begin();
    doWhatWaits();
    assertThat(begun).containsExactly("Heron scarf in grey");
  }

  @Test
  void aFileThatIsNotThereIsToldSo() {
    drafts.read(dir.resolve("gone.wif"));
    doWhatWaits();
    assertThat(drafts.faults()).hasSize(1);
    assertThat(drafts.openProperty().get()).isTrue();
  }

  private void doWhatWaits() {
    List<Runnable> now = List.copyOf(waiting);
    waiting.clear();
    now.forEach(Runnable::run);
  }
}
