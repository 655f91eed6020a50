package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.gear.Gear;
import hankbook.measure.Unreadable;
import hankbook.studio.KeptPlan;
import hankbook.studio.NotDone;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.OneLine;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The plans there are, the one that is open, and what can be done with it. */
public final class PlansModel {
  private static final Comparator<PlanRow> BY_NAME = Comparator.comparing(PlanRow::name, String.CASE_INSENSITIVE_ORDER).thenComparing(PlanRow::name);

  private final PlanDesk desk;
  private final Work work;
  private final Work listWork;
  private final Runnable ledgerChanged;
  private final PlanEditor editor;
  private final PlanActs acts;
  private final PlanRemedies remedies;
  private final FitModel fit;
  private final WindingModel winding;
  private final SettModel sett;
  private final CostModel cost;
  private final PlanOffers offers;
  private final PlanLifeModel life;
  private final BesideModel beside;
  private final Latest latestOpened = new Latest();
  private final Latest latestRefresh = new Latest();
  private final ObservableList<PlanRow> plans = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<PlanRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Gear> gear = new ReadOnlyObjectWrapper<>(new Gear(List.of(), List.of()));
  private final ReadOnlyObjectWrapper<List<ShelfSkein>> skeins = new ReadOnlyObjectWrapper<>(List.of());

  private Set<String> squared = Set.of();

  /**
   * The model of the plans screen.
   *
   * @param desk what asks the ledger
   * @param work where that happens and where its answers are told
   * @param ledgerChanged is run after yarn was moved
   */
  public PlansModel(PlanDesk desk, Work work, Runnable ledgerChanged) {
    this.desk = desk;
    this.work = work.inOrder();
    this.listWork = work.inOrder();
    this.ledgerChanged = ledgerChanged;
    this.editor = new PlanEditor(desk, this.work, this::wrong);
    this.acts = new PlanActs(desk, this.work, this::yarnMoved, editor.nameProperty()::get);
    this.remedies = new PlanRemedies(desk, listWork, editor, this::wrong);
    Work pageWork = work.inOrder();
    this.fit = new FitModel(desk, pageWork, editor);
    this.winding = new WindingModel(desk, pageWork, editor);
    this.sett = new SettModel(desk, pageWork, editor);
    this.cost = new CostModel(desk, pageWork, editor);
    this.offers = new PlanOffers(desk, pageWork, editor, gear, this::wrong);
    this.life = new PlanLifeModel(desk, listWork, this::wrong);
    editor.nameProperty().subscribe(life::follow);
    this.beside = new BesideModel(desk, pageWork, _ -> refresh());
    editor.answerProperty().subscribe(_ -> judge());
    editor.keeping().conflictProperty().subscribe(_ -> judge());
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

  /** What their colours look like. */
  YarnPalette palette() {
    return YarnPalette.of(skeins.get());
  }

  /** The looms and reeds to choose from. */
  ReadOnlyObjectProperty<Gear> gearProperty() {
    return gear.getReadOnlyProperty();
  }

  PlanEditor editor() {
    return editor;
  }

  PlanRemedies remedies() {
    return remedies;
  }

  FitModel fit() {
    return fit;
  }

  WindingModel winding() {
    return winding;
  }

  SettModel sett() {
    return sett;
  }

  CostModel cost() {
    return cost;
  }

  PlanOffers offers() {
    return offers;
  }

  PlanLifeModel life() {
    return life;
  }

  BesideModel beside() {
    return beside;
  }

  PlanActs acts() {
    return acts;
  }

  /** Asks the ledger anew: which plans there are, how each stands, and what is on the shelf. */
  public void refresh() {
    listWork.run(desk::names, latestRefresh.only(this::show), this::wrong);
    listWork.run(desk::squared, found -> squared = found, this::wrong);
    listWork.run(desk::skeins, this::showSkeins, this::wrong);
    listWork.run(desk::gear, gear::set, this::wrong);
    life.follow(editor.nameProperty().get());
    editor.ask();
    cost.ask();
    beside.ask();
    editor.lookAgain();
  }

  private void show(List<String> names) {
    chosen.get().filter(row -> !names.contains(row.name())).ifPresent(_ -> missing());
    plans.removeIf(row -> !names.contains(row.name()) && !isChosen(row) && !editor.keeping().held().contains(row.name()));
    names.stream().filter(name -> row(name).isEmpty()).forEach(name -> plans.add(new PlanRow(name)));
    plans.sort(BY_NAME);
    plans.forEach(this::reckon);
  }

  /** The open plan is gone from the ledger; where something of it is not kept, keeping it says so. */
  private void missing() {
    if (editor.keeping().isUnkept(editor.draftProperty().get())) {
      editor.keep();
    } else {
      leave();
    }
  }

  private void leave() {
    chosen.set(Optional.empty());
    editor.close();
  }

  private void reckon(PlanRow row) {
    if (!isOpen(row)) {
      reckon(row, () -> PlanDraft.of(desk.kept(row.name()).map(KeptPlan::text).orElse("")));
    }
  }

  /** A plan that is opened meanwhile has a verdict on what is typed, which knows better. */
  private void reckon(PlanRow row, Supplier<PlanDraft> text) {
    listWork.run(
        () -> PlanAnswer.of(text.get(), desk).standing(),
        standing -> {
          if (!isOpen(row)) {
            row.stands(standing);
          }
        },
        this::wrong);
  }

  private boolean isOpen(PlanRow row) {
    return row.name().equals(editor.nameProperty().get());
  }

  private boolean isChosen(PlanRow row) {
    return chosen.get().filter(now -> now == row).isPresent();
  }

  private void showSkeins(List<ShelfSkein> found) {
    skeins.set(found);
    plans.forEach(row -> row.lives(PlanLife.of(row.name(), found).squared(squared.contains(row.name()))));
    judge();
  }

  private void judge() {
    chosen.get().filter(this::isOpen).ifPresent(row -> {
      row.stands(editor.answerProperty().get().standing());
      acts.judge(editor.answerProperty().get(), row.lifeProperty().get());
      if (!editor.keeping().conflictProperty().get().isEmpty()) {
        acts.hinder("First choose which text of the plan is to be kept.");
      }
    });
  }

  /** Opens a plan; what was entered in the one before is kept. */
  void choose(String name) {
    if (chosen.get().filter(row -> row.name().equals(name)).isPresent()) {
      return;
    }
    PlanDraft left = editor.draftProperty().get();
    Optional<PlanRow> before = chosen.get().filter(this::isOpen);
    acts.say(PlanSaid.NOTHING);
    editor.close();
    before.ifPresent(row -> reckon(row, () -> left));
    chosen.set(row(name));
    acts.judge(new PlanAnswer.Reckoning(), PlanLife.PLANNED);
    acts.hinder("The plan is being opened.");
    work.run(() -> KeptCopy.of(desk, name), latestOpened.only(editor::open), trouble -> notOpened(name, trouble));
  }

  private void notOpened(String name, Exception trouble) {
    if (chosen.get().filter(row -> row.name().equals(name) && !isOpen(row)).isPresent()) {
      chosen.set(Optional.empty());
    }
    wrong(trouble);
  }

  /** Shows what is kept of the open plan now, in the place of what was entered here. */
  void showKept() {
    String name = editor.nameProperty().get();
    work.run(
        () -> KeptCopy.of(desk, name),
        latestOpened.only(copy -> {
          editor.giveIn(copy);
          acts.say(PlanSaid.NOTHING);
          refresh();
        }),
        this::wrong);
  }

  /** Keeps what was entered here in the place of what is kept now. */
  void keepMine() {
    acts.say(PlanSaid.NOTHING);
    editor.keepInstead();
    refresh();
  }

  /** Begins a plan of the name that was typed, or of one that is not taken where none was. */
  void begin(String typed) {
    named(typed.isBlank() ? NewPlan.name(names()) : typed).ifPresent(name -> {
      if (row(name).isPresent()) {
        acts.say(new PlanSaid("There is a plan named " + name + " already.", true));
      } else {
        work.run(() -> begun(name), this::open, this::wrong);
      }
    });
  }

  /** Makes a plan that says the same as the open one, and opens it; putting it away undoes that. */
  void duplicate() {
    String of = editor.nameProperty().get();
    whenKept(() -> work.run(
        () -> desk.duplicate(of),
        name -> {
          open(name);
          acts.say(new PlanSaid(Say.text("{0} says the same as {1}, and nothing is reserved for it. Put it away to undo this.", name, of), false));
        },
        this::wrong));
  }

  /** Lays the open plan beside others, as it is entered. */
  void layBeside() {
    String name = editor.nameProperty().get();
    PlanDraft draft = editor.draftProperty().get();
    whenKept(() -> beside.begin(name, draft));
  }

  /** What is to go by the open plan waits until that is in the ledger, and is left where it cannot be. */
  private void whenKept(Runnable then) {
    if (!editor.nameProperty().get().isEmpty()) {
      editor.keep();
      work.run(() -> true, _ -> {
        if (editor.keeping().conflictProperty().get().isEmpty()) {
          then.run();
        }
      }, this::wrong);
    }
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
    desk.keep(name, NewPlan.draft(name, desk.judgement()).json(), 0);
    return name;
  }

  /** The names of the plans that are listed. */
  List<String> names() {
    return plans.stream().map(PlanRow::name).toList();
  }

  /** Opens a plan that may not be on the list yet. */
  void open(String name) {
    if (row(name).isEmpty()) {
      plans.add(new PlanRow(name));
      plans.sort(BY_NAME);
    }
    choose(name);
    refresh();
  }

  /** Opens a plan if there is one of that name, unless another was opened meanwhile. */
  void openIfThere(String name) {
    listWork.run(
        desk::names,
        names -> {
          if (names.contains(name) && chosen.get().isEmpty()) {
            open(name);
          }
        },
        this::wrong);
  }

  /** Puts what was entered into the ledger; for when the screen is left. */
  public void keep() {
    editor.keep();
  }

  /** Keeps what was entered, and tells whether everything ever entered is in the ledger then. */
  void keep(Consumer<Boolean> then) {
    editor.keep();
    work.run(() -> true, _ -> then.accept(editor.keeping().isAllKept(editor.draftProperty().get())), _ -> then.accept(false));
  }

  /** Gives the open plan another name; tells whether the name can be one. */
  boolean rename(String typed) {
    String from = editor.nameProperty().get();
    Optional<String> name = named(typed);
    if (!from.isEmpty()) {
      name.filter(to -> !to.equals(from)).ifPresent(to -> editor.rename(to, now -> renamed(from, now)));
    }
    return name.isPresent();
  }

  private void renamed(String from, String to) {
    if (row(to).isEmpty()) {
      plans.add(new PlanRow(to));
      plans.sort(BY_NAME);
    }
    if (chosen.get().filter(row -> row.name().equals(from)).isPresent()) {
      chosen.set(row(to));
    }
    refresh();
  }

  /** Does something with the open plan's yarn, as it stands in the fields. */
  void act(PlanAct act) {
    editor.keep();
    editor.keeping().open().ifPresent(copy -> acts.act(act, copy, editor.draftProperty().get()));
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
