package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Cover;
import hankbook.allot.Change;
import hankbook.allot.Remedy;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.store.LedgerAddress;
import hankbook.studio.AuditLedger;
import hankbook.studio.CheckPlan;
import hankbook.studio.Draw;
import hankbook.studio.Finish;
import hankbook.studio.Journal;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.UUID;
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
  void noYarnIsTakenAgainForAPlanWhoseBookIsSquared() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Quay towels", false);
    new Draw(studio).plan(UUID.randomUUID(), "Quay towels");
    String usedUp = "S001 S002 S003 S005".replaceAll("(\\S+) ?", "{\"skein\": \"$1\", \"usedUp\": true},").replaceAll(",$", "");
    String actuals = "{\"format\": \"hankbook-actuals/1\", \"leftovers\": [" + usedUp + "], \"reason\": \"not weighed\"}";
    new Finish(studio).plan(UUID.randomUUID(), "Quay towels", ActualsFile.read("found.json", actuals).actuals());
    open("Quay towels");
    assertThat(List.of(hindrance(PlanAct.RESERVE), hindrance(PlanAct.RESERVE_WHAT_THERE_IS), hindrance(PlanAct.WIND)))
        .containsOnly("It was woven and its book squared; keep it under a new name to weave it again.");
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
  void yarnIsReservedForThePlanAsItStandsInTheFields() throws BadInput {
    open("Quay towels").editor().enter(COUNT, "1");
    model.act(PlanAct.RESERVE);
    assertThat(kept(COUNT)).isEqualTo("1");
    assertThat(reserved().isPositive()).isTrue();
    assertThat(reserved()).isEqualTo(needed());
  }

  private Length reserved() {
    return PlanLife.of("Quay towels", new Shelf(studio).skeins()).reserved().length();
  }

  private Length needed() throws BadInput {
    return new CheckPlan(studio).named("Quay towels").check().covers().stream().map(Cover::need).reduce(Length.ZERO, Length::plus);
  }

  private void changedByAnother(String count) throws NotDone {
    plans.keep("Quay towels", PlanDraft.of(plans.text("Quay towels").orElseThrow()).with(COUNT, count).json());
  }

  @Test
  void whatAnotherHasChangedIsNotOverwrittenAndWhatWasTypedStays() throws NotDone {
    open("Quay towels").editor().enter(COUNT, "3");
    changedByAnother("5");
    model.keep();
    assertThat(kept(COUNT)).isEqualTo("5");
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    assertThat(model.editor().keeping().conflictProperty().get()).isEqualTo("Quay towels was changed meanwhile, by Ida; nothing of it was changed now.");
    assertThat(model.acts().hindrancesProperty().get().values()).containsOnly("First choose which text of the plan is to be kept.");
    model.keepMine();
    assertThat(kept(COUNT)).isEqualTo("3");
    assertThat(model.editor().keeping().conflictProperty().get()).isEmpty();
    assertThat(hindrance(PlanAct.RESERVE)).isEmpty();
  }

  @Test
  void whatAnotherHasKeptCanBeShownInstead() throws NotDone {
    open("Quay towels").editor().enter(COUNT, "3");
    changedByAnother("5");
    model.keep();
    model.showKept();
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("5");
    assertThat(model.editor().keeping().conflictProperty().get()).isEmpty();
    model.editor().enter(COUNT, "6");
    model.keep();
    assertThat(kept(COUNT)).isEqualTo("6");
  }

  @Test
  void whatCouldNotBeKeptIsStillThereWhenThePlanIsChosenAgain() throws NotDone {
    open("Quay towels").editor().enter(COUNT, "3");
    changedByAnother("5");
    model.choose("Gorse shawl");
    assertThat(model.acts().saidProperty().get().text()).startsWith("Quay towels was changed meanwhile");
    model.choose("Quay towels");
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    assertThat(model.editor().keeping().conflictProperty().get()).startsWith("Quay towels was changed meanwhile");
    model.choose("Gorse shawl");
    model.choose("Quay towels");
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    model.keepMine();
    assertThat(kept(COUNT)).isEqualTo("3");
  }

  @Test
  void nothingIsReservedForWhatCouldNotBeKept() throws NotDone {
    open("Quay towels").editor().enter(COUNT, "3");
    changedByAnother("1");
    model.act(PlanAct.RESERVE);
    assertThat(moves()).isEmpty();
    assertThat(model.editor().keeping().conflictProperty().get()).isNotEmpty();
  }

  @Test
  void aNewerVersionIsShownUnlessSomethingHereIsNotKept() throws NotDone {
    open("Quay towels");
    changedByAnother("5");
    model.refresh();
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("5");
    model.editor().enter(COUNT, "6");
    changedByAnother("7");
    model.refresh();
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("6");
    assertThat(model.editor().keeping().conflictProperty().get()).isNotEmpty();
  }

  @Test
  void aPlanThatAnotherPutAwayStaysWithWhatWasTypedAndCanBeKeptAfterAll() throws NotDone {
    open("Quay towels").editor().enter(COUNT, "3");
    plans.putAway("Quay towels");
    model.refresh();
    assertThat(model.editor().keeping().conflictProperty().get()).startsWith("Quay towels was put away or given another name meanwhile");
    model.choose("Gorse shawl");
    model.refresh();
    model.choose("Quay towels");
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    model.keepMine();
    assertThat(kept(COUNT)).isEqualTo("3");
  }

  @Test
  void whileAPlanIsBeingOpenedNothingCanBeDoneWithTheOneBefore() throws NotDone {
    PlansModel slow = slow();
    slow.editor().enter(COUNT, "3");
    slow.choose("Gorse shawl");
    assertThat(slow.editor().nameProperty().get()).isEmpty();
    assertThat(slow.acts().hindrancesProperty().get().values()).containsOnly("The plan is being opened.");
    slow.act(PlanAct.PUT_AWAY);
    slow.rename("Harbour towels");
    runAll();
    assertThat(plans.names()).contains("Quay towels", "Gorse shawl").doesNotContain("Harbour towels");
    assertThat(kept(COUNT)).isEqualTo("3");
    assertThat(slow.editor().nameProperty().get()).isEqualTo("Gorse shawl");
  }

  @Test
  void whatCameOfAnActOnAPlanThatWasLeftNamesThatPlan() {
    PlansModel slow = slow();
    slow.act(PlanAct.RESERVE);
    slow.choose("Gorse shawl");
    runAll();
    assertThat(slow.editor().nameProperty().get()).isEqualTo("Gorse shawl");
    assertThat(slow.acts().saidProperty().get().text()).startsWith("Quay towels: Reserved: ");
  }

  @Test
  void whatIsTypedWhileAPlanIsRenamedIsKeptUnderItsNewName() {
    PlansModel slow = slow();
    slow.rename("Harbour towels");
    slow.editor().enter(COUNT, "3");
    slow.keep();
    runAll();
    assertThat(plans.names()).contains("Harbour towels").doesNotContain("Quay towels");
    assertThat(slow.editor().nameProperty().get()).isEqualTo("Harbour towels");
    assertThat(slow.editor().draftProperty().get().text(COUNT)).isEqualTo("3");
    assertThat(PlanDraft.of(plans.text("Harbour towels").orElseThrow()).text(COUNT)).isEqualTo("3");
  }

  @Test
  void aPlanLeftWhileItIsRenamedIsRenamedAndKept() {
    PlansModel slow = slow();
    slow.rename("Harbour towels");
    slow.editor().enter(COUNT, "3");
    slow.choose("Gorse shawl");
    runAll();
    assertThat(slow.editor().nameProperty().get()).isEqualTo("Gorse shawl");
    assertThat(PlanDraft.of(plans.text("Harbour towels").orElseThrow()).text(COUNT)).isEqualTo("3");
    assertThat(plans.names()).doesNotContain("Quay towels");
  }

  @Test
  void aRowThatWasTakenAwayCanBePutBackWhereItStood() {
    open("Quay towels").editor().enter(COUNT, "40");
    model.remedies().attempt(model.remedies().found().get(0));
    PlanDraft before = model.editor().draftProperty().get();
    model.editor().removeRow(PlanPart.ORDER, 1);
    assertThat(model.remedies().triedProperty().get()).isEmpty();
    assertThat(model.editor().removedProperty().get()).isPresent();
    model.editor().putBackRow();
    assertThat(model.editor().draftProperty().get()).isEqualTo(before);
    assertThat(PlanDraft.of(plans.text("Quay towels").orElseThrow())).isEqualTo(before);
    model.editor().addRow(PlanPart.PIECES);
    model.editor().removeRow(PlanPart.PIECES, model.editor().draftProperty().get().rows(PlanPart.PIECES).size());
    assertThat(model.editor().removedProperty().get()).isEmpty();
  }

  @Test
  void whetherAllIsKeptIsToldOnceTheLedgerHasAnswered() throws NotDone {
    List<Boolean> told = new ArrayList<>();
    PlansModel slow = slow();
    slow.editor().enter(COUNT, "3");
    slow.keep(told::add);
    assertThat(told).isEmpty();
    runAll();
    assertThat(told).containsExactly(true);
    slow.editor().enter(COUNT, "4");
    changedByAnother("5");
    slow.keep(told::add);
    runAll();
    assertThat(told).containsExactly(true, false);
  }

  @Test
  void thePlanLeftIsReckonedAnewInTheList() {
    PlansModel slow = slow();
    slow.refresh();
    runAll();
    slow.editor().enter(COUNT, "40");
    slow.choose("Gorse shawl");
    runAll();
    assertThat(slow.plans()).filteredOn(row -> row.name().equals("Quay towels")).singleElement().satisfies(
        row -> assertThat(row.standingProperty().get()).isEqualTo(Standing.SHORT));
  }

  /** A model whose errands wait, with a plan open. */
  private PlansModel slow() {
    PlansModel slow = new PlansModel(new StudioPlanDesk(studio), new Work(waiting::add, Runnable::run), () -> {});
    slow.refresh();
    runAll();
    slow.choose("Quay towels");
    runAll();
    return slow;
  }

  @Test
  void aShortPlanIsToldWhatWouldFitAndARemedyCanBeTriedAndPutBack() {
    open("Quay towels").editor().enter(COUNT, "40");
    Remedy fewer = model.remedies().found().stream().filter(remedy -> remedy.change().key().equals("fewerPieces")).findFirst().orElseThrow();
    assertThat(fewer.words()).matches("Weave only \\d+ of towel instead of 40\\.");
    model.remedies().attempt(fewer);
    assertThat(model.editor().answerProperty().get().standing()).isNotEqualTo(Standing.SHORT);
    assertThat(model.remedies().found()).isEmpty();
    model.remedies().putBack();
    assertThat(model.editor().draftProperty().get().text(COUNT)).isEqualTo("40");
    assertThat(model.remedies().triedProperty().get()).isEmpty();
  }

  @Test
  void everyRemedyThatCanBeTriedMakesThePlanFit() {
    for (String plan : List.of("Gorse shawl", "Linen runner")) {
      open(plan);
      assertThat(model.remedies().found()).as(plan).isNotEmpty();
      for (Remedy remedy : model.remedies().found()) {
        PlanDraft typed = model.editor().draftProperty().get();
        model.remedies().attempt(remedy);
        boolean cured = remedy.whole() && !(remedy.change() instanceof Change.Buying);
        assertThat(model.editor().answerProperty().get().standing() == Standing.SHORT).as(plan + ": " + remedy.words()).isNotEqualTo(cured);
        model.remedies().putBack();
        assertThat(model.editor().draftProperty().get()).isEqualTo(typed);
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

  @Test
  void aPlanThatWasChangedSinceItWasTriedIsReservedUnderAnotherId() throws BadInput {
    List<Object> ids = new ArrayList<>();
    model = new PlansModel(failingAfter("reserve", ids), new Work(Runnable::run, Runnable::run), () -> moved++);
    open("Quay towels").act(PlanAct.RESERVE);
    model.editor().enter(COUNT, "1");
    model.act(PlanAct.RESERVE);
    assertThat(ids).hasSize(2).doesNotHaveDuplicates();
    assertThat(reserved()).isEqualTo(needed());
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
