package hankbook.desktop;

import hankbook.studio.NotDone;
import hankbook.studio.Reverse;
import hankbook.studio.Studio;
import java.util.Optional;
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
  private Optional<JournalRow> entry = Optional.empty();

  /** @param after what follows once it is taken back */
  public TakingBack(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
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

  /** Turns to an entry, or to none; the reason typed for another one is cleared. */
  void turnTo(Optional<JournalRow> row) {
    boolean another = !row.map(JournalRow::id).equals(entry.map(JournalRow::id));
    entry = row;
    if (another) {
      reason.set("");
      act.renew();
    }
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
    status.done("Took back entry " + row.number() + ".");
    after.run();
  }

  private void refused(JournalRow row, Exception trouble) {
    boolean stillChosen = entry.filter(now -> now.id().equals(row.id())).isPresent();
    if (trouble instanceof NotDone && stillChosen) {
      refusal.set(Status.words(trouble));
      status.wrong("Entry " + row.number() + " was not taken back.");
    } else {
      status.wrong(trouble);
    }
  }

  private void changed() {
    act.renew();
    judge();
  }

  private void judge() {
    refusal.set("");
    act.judge(entry.map(this::whyNot).orElse("Choose an entry."));
  }

  private String whyNot(JournalRow row) {
    if (row.takenBack()) {
      return "Entry " + row.number() + " is already " + row.state() + ". Take that one back to bring this one about again.";
    }
    return reason.get().isBlank() ? "Give the reason first." : "";
  }
}
