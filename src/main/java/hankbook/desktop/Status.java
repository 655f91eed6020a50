package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import hankbook.store.LedgerSilent;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What the status line says: what was last done or what went wrong, and everything said before. */
public final class Status {
  /**
   * One thing said.
   *
   * @param text a sentence
   * @param trouble whether it tells of something that went wrong
   */
  public record Said(String text, boolean trouble) {}

  private final Underway underway = new Underway();
  private final ReadOnlyObjectWrapper<Said> last = new ReadOnlyObjectWrapper<>(new Said("", false));
  private final ObservableList<Said> earlier = FXCollections.observableArrayList();
  private final ObservableList<Said> earlierSeen = FXCollections.unmodifiableObservableList(earlier);

  /** What goes on that may take long. */
  public Underway underway() {
    return underway;
  }

  public ReadOnlyObjectProperty<Said> lastProperty() {
    return last.getReadOnlyProperty();
  }

  /** Everything said since the window opened, newest first. */
  public ObservableList<Said> earlier() {
    return earlierSeen;
  }

  /** Says what was done. */
  public void done(String text) {
    say(new Said(text, false));
  }

  /** Says what went wrong. */
  public void wrong(Exception trouble) {
    wrong(words(trouble));
  }

  /** Says what was not done, where the screen itself says why. */
  public void wrong(String text) {
    say(new Said(text, true));
  }

  private void say(Said said) {
    earlier.addFirst(said);
    last.set(said);
  }

  /** Whether a failure is none of the user's, nor of the ledger's whereabouts. */
  static boolean isOwnFault(Throwable trouble) {
    return !(isSaid(trouble) || trouble instanceof Unreadable || trouble instanceof CancellationException);
  }

  private static boolean isSaid(Throwable trouble) {
    return trouble instanceof NotDone || trouble instanceof BadInput || trouble instanceof LedgerUnavailable || trouble instanceof LedgerSilent;
  }

  /** What a failure means to the user. */
  static String words(Throwable trouble) {
    if (trouble instanceof NotDone notDone) {
      return Wording.phrase(notDone.phrase());
    }
    if (isSaid(trouble)) {
      return Objects.requireNonNullElse(trouble.getMessage(), "");
    }
    if (trouble instanceof CancellationException) {
      return Say.text("Stopped as you asked; nothing of it was written.");
    }
    if (trouble instanceof Unreadable unreadable) {
      return unreadable.found().isBlank() ? Wording.wanted(unreadable) : Say.text("That cannot be read: found '{0}', wanted {1}.", unreadable.found(), Wording.phrase(unreadable.phrase()));
    }
    String detail = Objects.requireNonNullElse(trouble.getMessage(), trouble.getClass().getSimpleName());
    return Say.text("That did not work, and the fault is Hankbook's own: {0}. The journal shows whether anything was written.", detail);
  }
}
