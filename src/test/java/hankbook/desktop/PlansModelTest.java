package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.ledger.EntryKind;
import hankbook.store.LedgerAddress;
import hankbook.studio.AuditLedger;
import hankbook.studio.Journal;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlansModelTest {
  private static final PlanField COUNT = new PlanField(PlanPart.PIECES, 1, "count");
  private static final PlanField SETT = PlanField.of(PlanPart.WARP, "sett");

  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private int moved;
  @TempDir private Path folder;
  private Studio studio;
  private Plans plans;
  private PlansModel model;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    SampleStudio.fill(studio);
    plans = new Plans(studio);
    model = new PlansModel(new StudioPlanDesk(studio), new Work(Runnable::run, Runnable::run), () -> moved++);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  private String kept(PlanField field) {
    return PlanDraft.of(plans.text("Quay towels").orElseThrow()).text(field);
  }

  private List<EntryKind> moves() {
    return new Journal(studio).newestFirst().stream().map(entry -> entry.chained().entry().kind()).filter(kind -> kind != EntryKind.RECEIVE).toList().reversed();
  }

  private PlanRow row(String name) {
    return model.plans().stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
  }

  private PlansModel open(String name) {
    model.refresh();
    model.choose(name);
    return model;
  }

  private String hindrance(PlanAct act) {
    return model.acts().hindrancesProperty().get().getOrDefault(act, "not judged");
  }

  @Test
  void everyPlanIsListedWithHowItStands() {
    model.refresh();
    assertThat(model.plans()).extracting(PlanRow::name).containsExactly("Ash blanket", "Gorse shawl", "Linen runner", "Quay towels");
    assertThat(row("Ash blanket").standingProperty().get()).isEqualTo(Standing.TIGHT);
    assertThat(row("Quay towels").standingProperty().get()).isEqualTo(Standing.COVERED);
    assertThat(row("Gorse shawl").standingProperty().get()).isEqualTo(Standing.SHORT);
    assertThat(row("Quay towels").lifeProperty().get().word()).isEqualTo("planned");
  }

  @Test
  void theAnswerFollowsWhatIsTyped() {
    open("Quay towels").editor().enter(COUNT, "40");
    assertThat(model.editor().answerProperty().get().standing()).isEqualTo(Standing.SHORT);
    assertThat(row("Quay towels").standingProperty().get()).isEqualTo(Standing.SHORT);
    model.editor().enter(COUNT, "4");
    assertThat(model.editor().answerProperty().get().standing()).isEqualTo(Standing.COVERED);
  }

  @Test
  void aTextThatCannotBeReadMakesThePlanUnfinishedAndIsKept() {
    open("Quay towels").editor().enter(SETT, "ten or so");
    model.editor().keep();
    assertThat(model.editor().answerProperty().get())
        .isInstanceOfSatisfying(
            PlanAnswer.Unfinished.class,
            unfinished -> {
              assertThat(unfinished.words()).isEqualTo("Warp, sett reads 'ten or so', wanted threads to a length such as 10/cm or 24/in.");
              assertThat(unfinished.faults()).singleElement().satisfies(fault -> assertThat(fault.field()).isEqualTo("warp.sett"));
            });
    assertThat(kept(SETT)).isEqualTo("ten or so");
  }

  @Test
  void everyFieldThatCannotBeReadIsToldAtOnce() {
    open("Quay towels").editor().enter(SETT, "ten or so");
    model.editor().enter(new PlanField(PlanPart.WEFT, 1, "picks"), "many");
    model.editor().enter(PlanField.of(PlanPart.ALLOWANCES, "gap"), "wide");
    assertThat(model.editor().answerProperty().get())
        .isInstanceOfSatisfying(
            PlanAnswer.Unfinished.class,
            unfinished -> assertThat(unfinished.faults()).extracting(fault -> fault.field()).containsExactly("warp.sett", "weft[1].picks", "allowances.gap"));
  }

  @Test
  void sharesThatDoNotSumAreToldInASentence() {
    open("Quay towels").editor().enter(new PlanField(PlanPart.ORDER, 2, "share"), "0.3");
    assertThat(model.editor().answerProperty().get())
        .isEqualTo(new PlanAnswer.Unfinished("Found '1.1', wanted shares of the warp's order that sum to 1.", List.of()));
  }

  @Test
  void whatWasTypedIsKeptWhenAnotherPlanIsChosen() {
    open("Quay towels").editor().enter(COUNT, "3");
    assertThat(kept(COUNT)).isEqualTo("4");
    model.choose("Gorse shawl");
    assertThat(kept(COUNT)).isEqualTo("3");
    assertThat(model.editor().nameProperty().get()).isEqualTo("Gorse shawl");
  }

  @Test
  void aNewPlanGetsANameThatIsNotTaken() {
    model.refresh();
    model.begin("");
    model.begin(" ");
    model.begin("Quay towels");
    assertThat(model.plans()).extracting(PlanRow::name).containsExactly("Ash blanket", "Gorse shawl", "Linen runner", "New plan", "New plan 2", "Quay towels");
    assertThat(model.acts().saidProperty().get()).isEqualTo(new PlanSaid("There is a plan named Quay towels already.", true));
    assertThat(row("New plan").standingProperty().get()).isEqualTo(Standing.UNFINISHED);
    assertThat(plans.names()).contains("New plan 2");
  }

  @Test
  void aNewPlanWantsNothingButWhatOnlyTheWeaverKnows() {
    model.refresh();
    model.begin("Moss scarf");
    PlanEditor editor = model.editor();
    editor.enter(new PlanField(PlanPart.PIECES, 1, "length"), "180 cm");
    editor.enter(new PlanField(PlanPart.PIECES, 1, "width"), "20 cm");
    editor.enter(SETT, "10/cm");
    for (PlanPart part : new PlanPart[] {PlanPart.ORDER, PlanPart.WEFT}) {
      editor.enter(new PlanField(part, 1, "yarn"), "Skerry 16/2");
      editor.enter(new PlanField(part, 1, "colour"), "Moss");
    }
    editor.enter(new PlanField(PlanPart.WEFT, 1, "picks"), "9/cm");
    assertThat(editor.answerProperty().get().standing()).isEqualTo(Standing.COVERED);
  }

  @Test
  void yarnIsReservedReleasedAndDrawn() {
    open("Quay towels");
    assertThat(hindrance(PlanAct.RELEASE)).isEqualTo("Nothing is reserved for this plan.");
    assertThat(hindrance(PlanAct.WIND)).isEqualTo("Reserve its yarn first: only that can be drawn.");
    model.act(PlanAct.RESERVE);
    assertThat(model.acts().saidProperty().get().text()).startsWith("Reserved: ");
    assertThat(row("Quay towels").lifeProperty().get().word()).isEqualTo("reserved");
    model.act(PlanAct.RELEASE);
    assertThat(row("Quay towels").lifeProperty().get().word()).isEqualTo("planned");
    model.act(PlanAct.RESERVE);
    model.act(PlanAct.WIND);
    assertThat(row("Quay towels").lifeProperty().get().word()).isEqualTo("on the loom");
    assertThat(moves()).containsExactly(EntryKind.RESERVE, EntryKind.RELEASE, EntryKind.RESERVE, EntryKind.DRAW);
    assertThat(moved).isEqualTo(4);
  }

  @Test
  void ofAShortPlanWhatThereIsCanBeReserved() {
    open("Gorse shawl");
    assertThat(hindrance(PlanAct.RESERVE)).isEqualTo("Gorse Gold and Selkie 20/2 Plum are short.");
    assertThat(hindrance(PlanAct.RESERVE_WHAT_THERE_IS)).isEmpty();
    model.act(PlanAct.RESERVE);
    assertThat(moves()).isEmpty();
    model.act(PlanAct.RESERVE_WHAT_THERE_IS);
    assertThat(moves()).containsExactly(EntryKind.RESERVE);
    assertThat(row("Gorse shawl").lifeProperty().get().word()).isEqualTo("reserved");
  }

  @Test
  void yarnIsReservedForThePlanAsItStandsInTheFields() {
    open("Quay towels").editor().enter(COUNT, "1");
    model.act(PlanAct.RESERVE);
    assertThat(kept(COUNT)).isEqualTo("1");
  }

  @Test
  void aShortPlanIsToldWhatWouldFitAndARemedyCanBeTriedAndPutBack() {
    open("Quay towels").editor().enter(COUNT, "40");
    Remedy fewer = model.remedies().foundProperty().get().get(0);
    assertThat(fewer.words()).matches("Weave only \\d+\\.");
    model.remedies().attempt(fewer.change().orElseThrow());
    assertThat(model.editor().answerProperty().get().standing()).isNotEqualTo(Standing.SHORT);
    assertThat(model.remedies().foundProperty().get()).isEmpty();
    model.remedies().putBack();
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("40");
    assertThat(model.remedies().beforeProperty().get()).isEmpty();
  }

  @Test
  void everyRemedyThatCanBeTriedMakesThePlanFit() {
    for (String plan : List.of("Gorse shawl", "Linen runner")) {
      open(plan);
      for (Remedy remedy : model.remedies().foundProperty().get()) {
        remedy.change().ifPresent(model.remedies()::attempt);
        assertThat(model.editor().answerProperty().get().standing()).as(plan + ": " + remedy).isNotEqualTo(remedy.change().isPresent() ? Standing.SHORT : Standing.UNFINISHED);
        model.remedies().putBack();
      }
    }
  }

  @Test
  void whatMayHaveBeenDoneIsTriedAgainUnderTheSameIdSoThatItIsDoneOnce() {
    List<Object> ids = new ArrayList<>();
    PlanDesk breaking = failingAfter("reserve", ids);
    model = new PlansModel(breaking, new Work(Runnable::run, Runnable::run), () -> moved++);
    open("Quay towels").act(PlanAct.RESERVE);
    assertThat(model.acts().saidProperty().get().text()).startsWith("That did not work, and the fault is Hankbook's own: the line went dead.");
    model.act(PlanAct.RESERVE);
    assertThat(ids).hasSize(2);
    assertThat(ids.get(0)).isEqualTo(ids.get(1));
    assertThat(moves()).containsExactly(EntryKind.RESERVE);
  }

  /** A desk of which one act is done but never answered. */
  private PlanDesk failingAfter(String act, List<Object> ids) {
    PlanDesk desk = new StudioPlanDesk(studio);
    return (PlanDesk) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {PlanDesk.class}, (_, method, given) -> {
      Object answer = method.invoke(desk, given);
      if (method.getName().equals(act)) {
        ids.add(given[0]);
        throw new IllegalStateException("the line went dead");
      }
      return answer;
    });
  }

  @Test
  void aPlanCanBeRenamedUntilItHasYarn() {
    open("Quay towels").editor().enter(COUNT, "3");
    model.rename("Harbour towels");
    assertThat(plans.names()).contains("Harbour towels").doesNotContain("Quay towels");
    assertThat(model.editor().nameProperty().get()).isEqualTo("Harbour towels");
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    model.rename("Ash blanket");
    assertThat(model.acts().saidProperty().get().trouble()).isTrue();
    model.act(PlanAct.RESERVE);
    model.rename("Quay towels");
    assertThat(plans.names()).contains("Harbour towels").doesNotContain("Quay towels");
  }

  @Test
  void aNameThatTheLedgerCannotTakeIsRefusedInWords() {
    open("Quay towels").rename("x".repeat(300));
    assertThat(model.acts().saidProperty().get()).isEqualTo(new PlanSaid("Wanted: one line of at most 200 printable characters.", true));
  }

  @Test
  void aPlanThatIsPutAwayIsOffTheListAndClosed() {
    open("Quay towels").act(PlanAct.PUT_AWAY);
    assertThat(model.plans()).extracting(PlanRow::name).doesNotContain("Quay towels");
    assertThat(model.chosenProperty().get()).isEmpty();
    assertThat(model.editor().nameProperty().get()).isEmpty();
  }

  @Test
  void aPlanWithYarnIsNotPutAway() {
    open("Quay towels").act(PlanAct.RESERVE);
    assertThat(hindrance(PlanAct.PUT_AWAY)).isEqualTo("It has yarn reserved or on the loom.");
    model.act(PlanAct.PUT_AWAY);
    assertThat(plans.names()).contains("Quay towels");
  }

  @Test
  void anAnswerToWhatIsNoLongerTypedIsDropped() {
    PlansModel slow = new PlansModel(new StudioPlanDesk(studio), new Work(waiting::add, Runnable::run), () -> {});
    slow.choose("Quay towels");
    runAll();
    slow.editor().enter(COUNT, "40");
    slow.editor().enter(COUNT, "4");
    assertThat(slow.editor().reckoningProperty().get()).isTrue();
    runAll();
    assertThat(slow.editor().reckoningProperty().get()).isFalse();
    assertThat(slow.editor().answerProperty().get().standing()).isEqualTo(Standing.COVERED);
  }

  private void runAll() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }
}
