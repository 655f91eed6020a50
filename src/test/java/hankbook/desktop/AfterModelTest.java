package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.exchange.DraftRow;
import hankbook.measure.Length;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Draw;
import hankbook.studio.Finish;
import hankbook.studio.FinishedPlans;
import hankbook.studio.Journal;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample studio with 1600 m of S001 and S002 each, 803.1 m of S003 and 518.4 m of S005 on the loom for its towels. */
class AfterModelTest {
  private static final String TOWELS = "Quay towels";

  @TempDir
  Path dir;

  private final List<Runnable> waiting = new ArrayList<>();
  private final Status status = new Status();
  private int moved;
  private Studio studio;
  private AfterModel model;

  @BeforeEach
  void openWithTowelsOnTheLoom() throws LedgerUnavailable, NotDone, BadInput {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada");
    SampleStudio.fill(studio);
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    new Draw(studio).plan(UUID.randomUUID(), TOWELS);
    Work work = new Work(waiting::add, Runnable::run);
    model = new AfterModel(studio, work, work, status, () -> moved++);
    model.refresh();
    doWhatWaits();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  private AfterEditor form() {
    model.choose(model.rows().getFirst());
    doWhatWaits();
    return model.editor();
  }

  private AfterEditor filled() {
    AfterEditor form = form();
    for (int row = 1; row <= 4; row++) {
      form.choose(row, LeftWay.USED_UP);
    }
    form.enter(form.draftProperty().get().with(ActualsPart.ACTUALS, 1, "reason", "not weighed"));
    doWhatWaits();
    return form;
  }

  @Test
  void aPlanOnALoomIsListedWithItsYarnAndItsFormBeginsWithWhatIsKnown() {
    assertThat(model.rows()).containsExactly(new AfterRow(TOWELS, false, "4\u202F521.5 m on the loom", "On the loom"));
    AfterEditor form = form();
    List<DraftRow> rows = form.draftProperty().get().rows(ActualsPart.LEFTOVERS);
    assertThat(rows).extracting(FoundRows::code).containsExactly("S001", "S002", "S003", "S005");
    assertThat(rows).extracting(form::way).containsOnly(LeftWay.WEIGHT);
    assertThat(rows.getFirst().text("tare")).as("what its cone weighs is known of it").isEqualTo("40 g");
    assertThat(form.act().whyNotProperty().get()).isEqualTo("Still to be said in step 1: what is left of S001, S002, S003, S005.");
    model.editor().keep();
    doWhatWaits();
    assertThat(new FinishedPlans(studio).draft(TOWELS)).as("what was not typed is not kept").isEmpty();
  }

  @Test
  void whatIsSaidInOneWayComesBackWithIt() {
    AfterEditor form = form();
    form.enter(form.draftProperty().get().with(ActualsPart.LEFTOVERS, 1, "gross", "92 g"));
    form.choose(1, LeftWay.LENGTH);
    assertThat(form.draftProperty().get().rows(ActualsPart.LEFTOVERS).getFirst()).isEqualTo(DraftRow.BLANK.with("skein", "S001"));
    form.choose(1, LeftWay.WEIGHT);
    assertThat(form.draftProperty().get().text(ActualsPart.LEFTOVERS, 1, "gross")).isEqualTo("92 g");
  }

  @Test
  void aReasonIsAskedForExactlyWhereMoreIsUnexplainedThanMayBe() {
    AfterEditor form = filled();
    AfterPreview preview = form.preview().foundProperty().get().orElseThrow();
    boolean wanted = !preview.wantingReason().isEmpty();
    form.enter(form.draftProperty().get().with(ActualsPart.ACTUALS, 1, "reason", ""));
    doWhatWaits();
    assertThat(form.act().isPossible()).isEqualTo(!wanted);
    form.enter(form.draftProperty().get().with(ActualsPart.LEFTOVERS, 1, "usedUp", "").with(ActualsPart.LEFTOVERS, 1, "left", "1500 m"));
    doWhatWaits();
    assertThat(form.preview().foundProperty().get().orElseThrow().wantingReason()).isNotEmpty();
    assertThat(form.act().whyNotProperty().get()).isEqualTo("Say why what cannot be explained is accepted, or measure again.");
    form.enter(form.draftProperty().get().with(ActualsPart.ACTUALS, 1, "reason", "the cone fell into the dye"));
    doWhatWaits();
    assertThat(form.act().isPossible()).isTrue();
  }

  @Test
  void whatCannotBeReadIsNamedAsTheFormNamesIt() {
    AfterEditor form = filled();
    form.enter(form.draftProperty().get().with(ActualsPart.WARP, 1, "length", "long").with(ActualsPart.THRUMS, 1, "length", "12 m"));
    doWhatWaits();
    assertThat(form.act().whyNotProperty().get()).startsWith("Mend first: Length wound reads 'long', wanted a length");
    form.enter(form.draftProperty().get().with(ActualsPart.WARP, 1, "length", "").with(ActualsPart.THRUMS, 1, "length", "thin"));
    doWhatWaits();
    assertThat(form.act().whyNotProperty().get()).startsWith("Mend first: Thrums 1 reads 'thin', wanted a length");
    form.enter(form.draftProperty().get().with(ActualsPart.THRUMS, 1, "length", "").with(ActualsPart.HOURS, 1, "weaving", "all day"));
    doWhatWaits();
    assertThat(form.act().whyNotProperty().get()).startsWith("Mend first: Weaving, hours reads 'all day', wanted a time");
  }

  @Test
  void aDoubleClickSquaresTheBookOnceAndTheLoomComesOutEmpty() {
    AfterEditor form = filled();
    form.square();
    form.square();
    doWhatWaits();
    assertThat(status.earlier()).extracting(Status.Said::text).singleElement().asString().startsWith("Squared the book of Quay towels: ");
    assertThat(moved).isEqualTo(1);
    assertThat(new Shelf(studio).everySkein()).allMatch(skein -> skein.onLoom().isEmpty() || skein.allOnLoom().equals(Length.ZERO));
    assertThat(model.rows()).extracting(AfterRow::isSquared).containsExactly(true);
    assertThat(model.squared().seenProperty().get().orElseThrow().reserved().used()).isEqualTo(new FinishedPlans(studio).named(TOWELS).orElseThrow().asReserved().used().stream()
        .map(yarn -> yarn.used()).reduce(Length.ZERO, Length::plus));
    assertThat(new FinishedPlans(studio).draft(TOWELS)).as("nothing is begun any more").isEmpty();
  }

  @Test
  void whatSomeoneElseHasSquaredMeanwhileIsShownAndWhatWasTypedIsKept() throws LedgerUnavailable, NotDone, BadInput {
    AfterEditor form = filled();
    form.enter(form.draftProperty().get().with(ActualsPart.ACTUALS, 1, "note", "mine"));
    try (Studio other = Studio.open(studio.address(), "Bea")) {
      new Finish(other).plan(UUID.randomUUID(), TOWELS, form.preview().foundProperty().get().orElseThrow().actuals().orElseThrow().because("hers"));
    }
    model.refresh();
    doWhatWaits();
    assertThat(form.groundProperty().get()).isEmpty();
    assertThat(model.squared().seenProperty().get().orElseThrow().plan().author()).isEqualTo("Bea");
    assertThat(new FinishedPlans(studio).draft(TOWELS).orElseThrow().text(ActualsPart.ACTUALS, 1, "note")).isEqualTo("mine");
    int entries = new Journal(studio).newestFirst().size();
    model.finishAgain();
    doWhatWaits();
    assertThat(form.draftProperty().get().text(ActualsPart.ACTUALS, 1, "note")).isEqualTo("mine");
    assertThat(form.act().isPossible()).isFalse();
    assertThat(new Journal(studio).newestFirst()).hasSize(entries);
  }

  @Test
  void whatSomeoneElseFoundWhileTheFormWasOpenIsNotOverwritten() throws LedgerUnavailable, NotDone, BadInput {
    AfterEditor form = filled();
    form.square();
    doWhatWaits();
    model.finishAgain();
    doWhatWaits();
    form.whyAgainProperty().set("weighed");
    doWhatWaits();
    assertThat(form.act().isPossible()).isTrue();
    try (Studio other = Studio.open(studio.address(), "Bea")) {
      new Finish(other).again(UUID.randomUUID(), TOWELS, form.preview().foundProperty().get().orElseThrow().actuals().orElseThrow().because("hers"), "looked again");
    }
    form.square();
    doWhatWaits();
    assertThat(status.lastProperty().get().text()).isEqualTo("Quay towels was finished meanwhile, by Bea; open it again to see by what. Nothing was changed.");
    assertThat(new FinishedPlans(studio).named(TOWELS).orElseThrow().author()).isEqualTo("Bea");
    model.leaveForm();
    doWhatWaits();
    model.finishAgain();
    doWhatWaits();
    form.square();
    doWhatWaits();
    assertThat(new FinishedPlans(studio).named(TOWELS).orElseThrow().author()).isEqualTo("Ada");
  }

  @Test
  void whatTheLedgerWouldNotTakeIsHeldAndStaysInTheForm() {
    AfterEditor form = form();
    form.enter(form.draftProperty().get().with(ActualsPart.ACTUALS, 1, "note", "kept here"));
    studio.close();
    form.keep();
    doWhatWaits();
    assertThat(status.lastProperty().get().trouble()).isTrue();
    boolean[] all = {true};
    model.keep(kept -> all[0] = kept);
    doWhatWaits();
    assertThat(all[0]).isFalse();
    assertThat(form.draftProperty().get().text(ActualsPart.ACTUALS, 1, "note")).isEqualTo("kept here");
  }

  @Test
  void aPlanThatWasEditedSinceIsHeldAgainstBoth() throws NotDone, BadInput {
    filled().square();
    doWhatWaits();
    assertThat(model.squared().seenProperty().get().orElseThrow().whyNotEdited()).isEqualTo("The plan was not edited since.");
    String text = new Plans(studio).text(TOWELS).orElseThrow();
    new Plans(studio).keep(TOWELS, text.replace("\"loomWaste\" : \"70 cm\"", "\"loomWaste\": \"20 cm\"").replace("\"loomWaste\": \"70 cm\"", "\"loomWaste\": \"20 cm\""));
    model.refresh();
    doWhatWaits();
    SquaredSeen seen = model.squared().seenProperty().get().orElseThrow();
    assertThat(seen.edited().orElseThrow().planned()).isLessThan(seen.reserved().planned());
    assertThat(seen.edited().orElseThrow().used()).isEqualTo(seen.reserved().used());
  }

  private void doWhatWaits() {
    while (!waiting.isEmpty()) {
      List<Runnable> now = List.copyOf(waiting);
      waiting.clear();
      now.forEach(Runnable::run);
    }
  }
}
