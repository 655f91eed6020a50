package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.BadInput;
import hankbook.studio.FinishList;
import hankbook.studio.FinishedPlans;
import hankbook.studio.Finishing;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import hankbook.studio.ToFinish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The plans whose cloth is to be cut off or was, the one that is chosen, and what is found of it. */
public final class AfterModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable ledgerChanged;
  private final FoundKeeping keeping;
  private final AfterEditor editor;
  private final SquaredModel squared;
  private final LearntModel learnt;
  private final Latest latestList = new Latest();
  private final Latest latestOpened = new Latest();
  private final ObservableList<AfterRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<AfterRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper known = new ReadOnlyBooleanWrapper(false);

  /**
   * The model of the screen after the cloth.
   *
   * @param work on the ledger, in the order in which the user acted
   * @param reckoning of what forms come to
   * @param ledgerChanged is run after yarn was moved
   */
  public AfterModel(Studio studio, Work work, Work reckoning, Status status, Runnable ledgerChanged) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.ledgerChanged = ledgerChanged;
    Work inOrder = reckoning.inOrder();
    keeping = new FoundKeeping(studio, work, status::wrong);
    editor = new AfterEditor(studio, work, inOrder, status, keeping, this::finished);
    squared = new SquaredModel(studio, work, status, this::takenBack);
    learnt = new LearntModel(studio, work, status);
  }

  /** Those to be finished, by name, then those that are, the newest first. */
  ObservableList<AfterRow> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  ReadOnlyObjectProperty<Optional<AfterRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Whether the ledger was asked already. */
  ReadOnlyBooleanProperty knownProperty() {
    return known.getReadOnlyProperty();
  }

  AfterEditor editor() {
    return editor;
  }

  SquaredModel squared() {
    return squared;
  }

  LearntModel learnt() {
    return learnt;
  }

  /** Shows what finished plans taught, in the place of the chosen plan. */
  void showLearnt() {
    leave();
    learnt.open();
  }

  /** Asks the ledger anew; what is filled in stays as it is. */
  public void refresh() {
    work.run(() -> FinishList.of(studio), latestList.only(this::show), status::wrong);
    editor.groundProperty().get().ifPresent(open -> ground(open.plan().name(), now -> editor.lookAgain(open, now)));
    squared.refresh();
    learnt.refresh();
  }

  private void ground(String plan, Consumer<ToFinish> then) {
    work.run(() -> ToFinish.of(studio, plan), then, _ -> editor.preview().ask());
  }

  private void show(FinishList list) {
    List<AfterRow> found = new ArrayList<>();
    list.waiting().forEach(waiting -> found.add(AfterRow.of(waiting, found.isEmpty())));
    int before = found.size();
    list.squared().forEach(closed -> found.add(AfterRow.of(closed, found.size() == before)));
    Optional<AfterRow> was = chosen.get();
    rows.setAll(found);
    known.set(true);
    Optional<AfterRow> same = was.flatMap(row -> found.stream().filter(row::isSame).findFirst());
    Optional<AfterRow> other = was.flatMap(row -> found.stream().filter(now -> now.plan().equals(row.plan())).findFirst());
    if (same.isPresent()) {
      chosen.set(same);
    } else {
      other.ifPresentOrElse(this::choose, this::leave);
    }
  }

  private void leave() {
    chosen.set(Optional.empty());
    editor.close();
    squared.close();
  }

  /** Chooses a plan: its form is opened, or where its book is squared, what came of it. */
  void choose(AfterRow row) {
    if (chosen.get().filter(row::isSame).isPresent()) {
      return;
    }
    leave();
    learnt.close();
    chosen.set(Optional.of(row));
    if (row.isSquared()) {
      squared.open(row.plan());
    } else {
      openForm(row.plan());
    }
  }

  /** Opens the form of a squared plan, filled with what was found. */
  void finishAgain() {
    chosen.get().filter(AfterRow::isSquared).ifPresent(row -> openForm(row.plan()));
  }

  /** Goes back from the form of a squared plan to what came of it; what was filled in is kept. */
  void leaveForm() {
    editor.close();
    refresh();
  }

  /** What is filled in of a plan, and what it is held against. */
  private record Form(ToFinish ground, ActualsDraft draft) {}

  private void openForm(String plan) {
    FinishedPlans plans = new FinishedPlans(studio);
    Callable<Form> form = () -> new Form(ToFinish.of(studio, plan), draft(plans, plan));
    work.run(form, latestOpened.only(found -> open(plan, found)), status::wrong);
  }

  private void open(String plan, Form form) {
    if (chosen.get().filter(row -> row.plan().equals(plan)).isPresent()) {
      editor.open(form.ground(), form.draft());
    }
  }

  private static ActualsDraft draft(FinishedPlans plans, String plan) throws BadInput, NotDone {
    Optional<ActualsDraft> kept = plans.draft(plan);
    return kept.isPresent() ? kept.get() : plans.form(plan);
  }

  private void finished(Optional<Finishing> done) {
    status.done(done.map(AfterWords::squared).orElse(Say.text("The book was squared already.")));
    ledgerChanged.run();
    chosen.set(chosen.get().map(row -> new AfterRow(row.plan(), true, row.words(), "")));
    chosen.get().ifPresent(row -> squared.open(row.plan()));
    refresh();
  }

  private void takenBack() {
    ledgerChanged.run();
    refresh();
  }

  /** Puts what was filled in into the ledger, and tells whether all of it is there then. */
  void keep(Consumer<Boolean> then) {
    editor.keep();
    work.run(() -> true, _ -> then.accept(keeping.isAllKept()), _ -> then.accept(false));
  }
}
