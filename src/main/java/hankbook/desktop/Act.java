package hankbook.desktop;

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
    whyNot.set(why);
    possible.set(why.isEmpty());
  }

  /** What is asked has changed: it is another thing to write. */
  void renew() {
    id = UUID.randomUUID();
  }

  /** Does it; what follows a success happens once. */
  void attempt(Deed deed, Runnable then, Consumer<Exception> otherwise) {
    UUID mine = id;
    work.run(
        () -> {
          deed.under(mine);
          return mine;
        },
        done -> {
          if (done.equals(id)) {
            renew();
            then.run();
          }
        },
        otherwise);
  }
}
