package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * Something that is written into the ledger once it is possible. It keeps one id until it has succeeded or what is asked changes, so that
 * a double click writes once.
 */
final class Act {
  /** What is done in the ledger under an id. */
  interface Deed {
    void under(UUID id) throws Exception;
  }

  private final Work work;
  private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper(false);
  private UUID id = UUID.randomUUID();
  private String hindrance = "";
  private boolean underWay;

  Act(Work work) {
    this.work = work;
  }

  /** Why it cannot be done as things stand, or empty. */
  ReadOnlyStringProperty whyNotProperty() {
    return whyNot.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty possibleProperty() {
    return possible.getReadOnlyProperty();
  }

  boolean isPossible() {
    return possible.get();
  }

  /** Says why it cannot be done, or with an empty text that it can. */
  void judge(String why) {
    hindrance = why;
    show();
  }

  private void show() {
    whyNot.set(underWay ? Say.text("It is being written down.") : hindrance);
    possible.set(!underWay && hindrance.isEmpty());
  }

  /** What is asked has changed: it is another thing to write. */
  void renew() {
    id = UUID.randomUUID();
  }

  /**
   * Does it, unless it is under way already.
   *
   * @param clear empties the fields; left out where something else was asked meanwhile
   * @param then what follows every success
   */
  void attempt(Deed deed, Runnable clear, Runnable then, Consumer<Exception> otherwise) {
    if (underWay) {
      return;
    }
    UUID mine = id;
    goesOn(true);
    work.run(
        () -> {
          deed.under(mine);
          return mine;
        },
        done -> succeeded(done, clear, then),
        trouble -> {
          goesOn(false);
          otherwise.accept(trouble);
        });
  }

  private void succeeded(UUID done, Runnable clear, Runnable then) {
    boolean asAsked = done.equals(id);
    goesOn(false);
    if (asAsked) {
      renew();
      clear.run();
    }
    then.run();
  }

  private void goesOn(boolean now) {
    underWay = now;
    show();
  }
}
