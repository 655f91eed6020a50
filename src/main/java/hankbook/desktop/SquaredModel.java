package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.BadInput;
import hankbook.studio.Finish;
import hankbook.studio.FinishedPlans;
import hankbook.studio.NotDone;
import hankbook.studio.PlanRecord;
import hankbook.studio.Progress;
import hankbook.studio.Studio;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What came of a plan whose book is squared, and taking that back. */
final class SquaredModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final Latest latest = new Latest();
  private final ReadOnlyObjectWrapper<Optional<SquaredSeen>> seen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final BooleanProperty asEdited = new SimpleBooleanProperty(false);
  private final ObjectProperty<Optional<YarnColour>> yarn = new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty reason = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
  private Optional<String> open = Optional.empty();

  /** @param after what follows once it is taken back */
  SquaredModel(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    act = new Act(work);
    reason.subscribe(_ -> changed());
  }

  /** What came of the plan that is open. */
  ReadOnlyObjectProperty<Optional<SquaredSeen>> seenProperty() {
    return seen.getReadOnlyProperty();
  }

  /** Whether it is held against the plan as it was last edited. */
  BooleanProperty asEditedProperty() {
    return asEdited;
  }

  /** The yarn of which it is shown where it went; empty for all of them together. */
  ObjectProperty<Optional<YarnColour>> yarnProperty() {
    return yarn;
  }

  /** Why it is taken back. */
  StringProperty reasonProperty() {
    return reason;
  }

  /** Why the ledger would not take it back, or empty. */
  ReadOnlyStringProperty refusalProperty() {
    return refusal.getReadOnlyProperty();
  }

  Act act() {
    return act;
  }

  /** Opens a plan whose book is squared. */
  void open(String plan) {
    close();
    open = Optional.of(plan);
    refresh();
  }

  /** Leaves no plan open. */
  void close() {
    open = Optional.empty();
    seen.set(Optional.empty());
    asEdited.set(false);
    yarn.set(Optional.empty());
    reason.set("");
    judge();
  }

  /** Asks the ledger anew. */
  void refresh() {
    open.ifPresent(plan -> work.run(() -> SquaredSeen.of(studio, plan), latest.only(found -> show(plan, found)), status::wrong));
  }

  private void show(String plan, Optional<SquaredSeen> found) {
    if (open.equals(Optional.of(plan))) {
      seen.set(found);
      asEdited.set(asEdited.get() && found.flatMap(SquaredSeen::edited).isPresent());
      judge();
    }
  }

  /** A name for the file of its record; empty where no plan is open. */
  Optional<String> recordName() {
    return open.map(plan -> Say.text("{0}, record", plan.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]", "-")) + ".pdf");
  }

  /** Writes its record as a page to print to a file that is not there yet. */
  void saveRecord(Path file) {
    open.ifPresent(plan -> status.underway().run(
        work, Say.text("Saving the record of {0}.", plan), progress -> written(plan, file, progress), status::done, status::wrong));
  }

  /** Once it was looked whether to stop, the file is written whole. */
  private String written(String plan, Path file, Progress progress) throws BadInput, NotDone {
    progress.at(0, 1);
    new PlanRecord(studio).write(plan, file);
    return Say.text("Saved the record of {0} as {1}.", plan, file);
  }

  /** Takes it back, so that its yarn is on the loom again; what was found stays in its form. */
  void takeBack() {
    if (act.isPossible()) {
      String plan = open.orElseThrow();
      String why = reason.get();
      refusal.set("");
      act.attempt(id -> takeBack(id, plan, why), () -> reason.set(""), () -> done(plan), this::refused);
    }
  }

  private void takeBack(UUID id, String plan, String why) throws BadInput, NotDone {
    FinishedPlans plans = new FinishedPlans(studio);
    Optional<ActualsDraft> begun = plans.draft(plan);
    ActualsDraft found = begun.isPresent() ? begun.get() : plans.form(plan);
    new Finish(studio).takeBack(id, plan, why);
    plans.keep(plan, found);
  }

  private void done(String plan) {
    status.done(Say.text("Took back the finish of {0}: its yarn is on the loom again, and what was found stays in its form.", plan));
    after.run();
  }

  private void refused(Exception trouble) {
    if (trouble instanceof NotDone) {
      refusal.set(Status.words(trouble));
      status.wrong(Say.text("The finish was not taken back."));
    } else {
      status.wrong(trouble);
    }
  }

  private void changed() {
    act.renew();
    refusal.set("");
    judge();
  }

  private void judge() {
    act.judge(open.isEmpty() ? Say.text("Choose a plan.") : reason.get().isBlank() ? Say.text("Give the reason first.") : "");
  }
}
