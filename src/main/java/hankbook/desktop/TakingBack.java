package hankbook.desktop;

import hankbook.studio.NotDone;
import hankbook.studio.Reverse;
import hankbook.studio.Studio;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Taking the chosen entry back, with a reason. A refusal is said in place and the reason stays as it was typed. */
public final class TakingBack {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final StringProperty reason = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper(false);
  private Optional<JournalRow> entry = Optional.empty();
  private UUID id = UUID.randomUUID();

  /** @param after what follows once it is taken back */
  public TakingBack(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    reason.subscribe(text -> judge());
  }

  StringProperty reasonProperty() {
    return reason;
  }

  /** Why it cannot be tried as it stands, or empty. */
  ReadOnlyStringProperty whyNotProperty() {
    return whyNot.getReadOnlyProperty();
  }

  /** Why the ledger would not take it back, or empty. */
  ReadOnlyStringProperty refusalProperty() {
    return refusal.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty possibleProperty() {
    return possible.getReadOnlyProperty();
  }

  /** Turns to an entry, or to none; the reason typed for another one is cleared. */
  void turnTo(Optional<JournalRow> row) {
    boolean another = !row.map(JournalRow::id).equals(entry.map(JournalRow::id));
    entry = row;
    if (another) {
      id = UUID.randomUUID();
      reason.set("");
    }
    judge();
  }

  /** Takes it back. */
  void takeBack() {
    judge();
    if (possible.get()) {
      JournalRow row = entry.orElseThrow();
      UUID mine = id;
      String why = reason.get().strip();
      work.run(
          () -> {
            new Reverse(studio).entry(mine, row.id(), why);
            return row;
          },
          this::done,
          trouble -> refused(row, trouble));
    }
  }

  private void done(JournalRow row) {
    status.done("Took back entry " + row.number() + ".");
    id = UUID.randomUUID();
    reason.set("");
    after.run();
  }

  private void refused(JournalRow row, Exception trouble) {
    if (trouble instanceof NotDone && entry.filter(now -> now.id().equals(row.id())).isPresent()) {
      id = UUID.randomUUID();
      refusal.set(Status.words(trouble));
      status.wrong("Entry " + row.number() + " was not taken back.");
    } else {
      status.wrong(trouble);
    }
  }

  private void judge() {
    refusal.set("");
    whyNot.set(entry.map(this::whyNot).orElse("Choose an entry."));
    possible.set(whyNot.get().isEmpty());
  }

  private String whyNot(JournalRow row) {
    if (row.takenBack()) {
      return "Entry " + row.number() + " is already " + row.state() + ". Take that one back to bring this one about again.";
    }
    return reason.get().isBlank() ? "Give the reason first." : "";
  }
}
