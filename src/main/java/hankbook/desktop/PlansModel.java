package hankbook.desktop;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Unreadable;
import hankbook.studio.NotDone;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.OneLine;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The plans there are, the one that is open, and what can be done with it. */
public final class PlansModel {
  private static final PlanField NAME = PlanField.of(PlanPart.PLAN, "name");
  private static final Comparator<PlanRow> BY_NAME = Comparator.comparing(PlanRow::name, String.CASE_INSENSITIVE_ORDER).thenComparing(PlanRow::name);

  private final PlanDesk desk;
  private final Work work;
  private final Work listWork;
  private final Runnable ledgerChanged;
  private final PlanEditor editor;
  private final PlanActs acts;
  private final PlanRemedies remedies;
  private final Latest latestOpened = new Latest();
  private final Latest latestRefresh = new Latest();
  private final ObservableList<PlanRow> plans = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<PlanRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<List<ShelfSkein>> skeins = new ReadOnlyObjectWrapper<>(List.of());

  /**
   * The model of the plans screen.
   *
   * @param desk what asks the ledger
   * @param work where that happens and where its answers are told
   * @param ledgerChanged is run after yarn was moved
   */
  public PlansModel(PlanDesk desk, Work work, Runnable ledgerChanged) {
    this.desk = desk;
    this.work = new Work(new InOrder(work.away()), work.here());
    this.listWork = new Work(new InOrder(work.away()), work.here());
    this.ledgerChanged = ledgerChanged;
    this.acts = new PlanActs(desk, this.work, this::yarnMoved);
    this.editor = new PlanEditor(desk, this.work, this::wrong);
    this.remedies = new PlanRemedies(desk, listWork, editor, this::wrong);
    editor.answerProperty().subscribe(_ -> judge());
  }

  ObservableList<PlanRow> plans() {
    return FXCollections.unmodifiableObservableList(plans);
  }

  ReadOnlyObjectProperty<Optional<PlanRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Every skein, for the yarns and colours to choose from. */
  ReadOnlyObjectProperty<List<ShelfSkein>> skeinsProperty() {
    return skeins.getReadOnlyProperty();
  }

  PlanEditor editor() {
    return editor;
  }

  PlanRemedies remedies() {
    return remedies;
  }

  PlanActs acts() {
    return acts;
  }

  /** Asks the ledger anew: which plans there are, how each stands, and what is on the shelf. */
  public void refresh() {
    listWork.run(desk::names, latestRefresh.only(this::show), this::wrong);
    listWork.run(desk::skeins, this::showSkeins, this::wrong);
    editor.ask();
  }

  private void show(List<String> names) {
    chosen.get().filter(row -> !names.contains(row.name())).ifPresent(_ -> leave());
    plans.removeIf(row -> !names.contains(row.name()));
    names.stream().filter(name -> row(name).isEmpty()).forEach(name -> plans.add(new PlanRow(name)));
    plans.sort(BY_NAME);
    plans.forEach(this::reckon);
  }

  private void leave() {
    chosen.set(Optional.empty());
    editor.close();
  }

  private void reckon(PlanRow row) {
    if (!row.name().equals(editor.nameProperty().get())) {
      listWork.run(() -> PlanAnswer.of(PlanDraft.of(desk.text(row.name()).orElse("")), desk).standing(), row::stands, this::wrong);
    }
  }

  private void showSkeins(List<ShelfSkein> found) {
    skeins.set(found);
    plans.forEach(row -> row.lives(PlanLife.of(row.name(), found)));
    judge();
  }

  private void judge() {
    chosen.get().filter(row -> row.name().equals(editor.nameProperty().get())).ifPresent(row -> {
      row.stands(editor.answerProperty().get().standing());
      acts.judge(editor.answerProperty().get(), row.lifeProperty().get());
    });
  }

  /** Opens a plan; what was entered in the one before is kept. */
  void choose(String name) {
    if (chosen.get().filter(row -> row.name().equals(name)).isPresent()) {
      return;
    }
    editor.keep();
    chosen.set(row(name));
    acts.say(PlanSaid.NOTHING);
    acts.judge(new PlanAnswer.Reckoning(), PlanLife.PLANNED);
    work.run(() -> desk.text(name), latestOpened.only(text -> editor.open(name, draft(name, text))), this::wrong);
  }

  private static PlanDraft draft(String name, Optional<String> text) {
    return PlanDraft.of(text.orElse("")).with(NAME, name);
  }

  /** Begins a plan of the name that was typed, or of one that is not taken where none was. */
  void begin(String typed) {
    named(typed.isBlank() ? NewPlan.name(plans.stream().map(PlanRow::name).toList()) : typed).ifPresent(name -> {
      if (row(name).isPresent()) {
        acts.say(new PlanSaid("There is a plan named " + name + " already.", true));
      } else {
        work.run(() -> begun(name), this::opened, this::wrong);
      }
    });
  }

  /** A name as the ledger takes it, or a word on why it does not. */
  private Optional<String> named(String typed) {
    try {
      return Optional.of(OneLine.of(typed));
    } catch (Unreadable unreadable) {
      acts.say(new PlanSaid(Wording.wanted(unreadable), true));
      return Optional.empty();
    }
  }

  private String begun(String name) throws NotDone {
    desk.keep(name, NewPlan.draft(name).json());
    return name;
  }

  private void opened(String name) {
    if (row(name).isEmpty()) {
      plans.add(new PlanRow(name));
      plans.sort(BY_NAME);
    }
    choose(name);
    refresh();
  }

  /** Puts what was entered into the ledger; for when the screen is left. */
  public void keep() {
    editor.keep();
  }

  /** Gives the open plan another name. */
  void rename(String typed) {
    String from = editor.nameProperty().get();
    named(typed).filter(to -> !to.equals(from)).ifPresent(to -> {
      editor.keep();
      String text = editor.draftProperty().get().with(NAME, to).json();
      work.run(() -> renamed(from, to, text), this::opened, this::wrong);
    });
  }

  private String renamed(String from, String to, String text) throws NotDone {
    desk.rename(from, to, text);
    return to;
  }

  /** Does something with the open plan's yarn, as it stands in the fields. */
  void act(PlanAct act) {
    editor.keep();
    acts.act(act, editor.nameProperty().get());
  }

  private void yarnMoved() {
    refresh();
    ledgerChanged.run();
  }

  private Optional<PlanRow> row(String name) {
    return plans.stream().filter(row -> row.name().equals(name)).findFirst();
  }

  private void wrong(Exception trouble) {
    acts.say(new PlanSaid(PlanWords.trouble(trouble), true));
  }
}
