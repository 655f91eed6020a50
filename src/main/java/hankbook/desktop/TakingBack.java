package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.NotDone;
import hankbook.studio.Reverse;
import hankbook.studio.Studio;
import hankbook.studio.Undo;
import hankbook.studio.Undoing;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Taking the chosen entry back, with a reason. A refusal is said in place and the reason stays as it was typed. */
public final class TakingBack {
  private final Studio studio;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final StringProperty reason = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<Undoing>> preview = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final Latest latest = new Latest();
  private final Work work;
  private Optional<JournalRow> entry = Optional.empty();

  /** @param after what follows once it is taken back */
  public TakingBack(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    act = new Act(work);
    reason.subscribe(text -> changed());
  }

  Act act() {
    return act;
  }

  StringProperty reasonProperty() {
    return reason;
  }

  /** Why the ledger would not take it back, or empty. */
  ReadOnlyStringProperty refusalProperty() {
    return refusal.getReadOnlyProperty();
  }

  /** What taking it back would do; empty where none is chosen, or that was not looked up yet. */
  ReadOnlyObjectProperty<Optional<Undoing>> previewProperty() {
    return preview.getReadOnlyProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !reason.get().isBlank();
  }

  /** Turns to an entry, or to none; the reason typed for another one is cleared. */
  void turnTo(Optional<JournalRow> row) {
    boolean another = !row.map(JournalRow::id).equals(entry.map(JournalRow::id));
    entry = row;
    if (another) {
      reason.set("");
      refusal.set("");
      act.renew();
    }
    foresee(another);
    judge();
  }

  /** An entry that was taken back already has nothing to be foreseen. */
  private void foresee(boolean another) {
    Optional<Long> number = entry.filter(row -> !row.takenBack()).map(JournalRow::number);
    if (another || number.isEmpty()) {
      preview.set(Optional.empty());
    }
    work.run(() -> number.flatMap(new Undo(studio)::numbered), latest.only(this::foreseen), latest.also(status::wrong));
  }

  private void foreseen(Optional<Undoing> undoing) {
    preview.set(undoing);
    judge();
  }

  /** Takes it back. */
  void takeBack() {
    if (act.isPossible()) {
      JournalRow row = entry.orElseThrow();
      String why = reason.get().strip();
      refusal.set("");
      act.attempt(id -> new Reverse(studio).entry(id, row.id(), why), () -> reason.set(""), () -> done(row), trouble -> refused(row, trouble));
    }
  }

  private void done(JournalRow row) {
    status.done(Say.text("Took back entry {0}.", row.number()));
    after.run();
  }

  private void refused(JournalRow row, Exception trouble) {
    boolean stillChosen = entry.filter(now -> now.id().equals(row.id())).isPresent();
    if (trouble instanceof NotDone && stillChosen) {
      foresee(false);
      refusal.set(Status.words(trouble));
      status.wrong(Say.text("Entry {0} was not taken back.", row.number()));
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
    act.judge(entry.map(this::whyNot).orElseGet(() -> Say.text("Choose an entry.")));
  }

  private String whyNot(JournalRow row) {
    if (row.takenBack()) {
      return Say.text("Entry {0} is already {1}. Take that one back to bring this one about again.", row.number(), row.state());
    }
    return preview.get().flatMap(Undoing::whyNot).orElseGet(() -> reason.get().isBlank() ? Say.text("Give the reason first.") : "");
  }
}
