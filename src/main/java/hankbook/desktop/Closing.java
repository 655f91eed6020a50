package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.function.Consumer;

/** Closing the window: at once where all is kept, and against what could not be kept only on being asked twice. */
final class Closing {
  private final Consumer<Consumer<Boolean>> keep;
  private final Status status;
  private final Runnable close;
  private boolean asked;
  private boolean warned;

  /**
   * @param keep puts what was typed into the ledger and tells whether all of it is there
   * @param close closes the window
   */
  Closing(Consumer<Consumer<Boolean>> keep, Status status, Runnable close) {
    this.keep = keep;
    this.status = status;
    this.close = close;
  }

  /** The user wants to close the window. */
  void ask() {
    if (warned) {
      close.run();
    } else if (!asked) {
      asked = true;
      keep.accept(this::answered);
    }
  }

  /** The answer has been waited for long enough. */
  void tire() {
    if (asked) {
      answered(false);
    }
  }

  private void answered(boolean kept) {
    if (!asked) {
      return;
    }
    asked = false;
    if (kept) {
      close.run();
    } else {
      warned = true;
      status.wrong(Say.text("Not everything that was typed could be kept in the ledger. Close the window once more to close it all the same."));
    }
  }
}
