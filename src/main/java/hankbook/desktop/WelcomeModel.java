package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.studio.Receive;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The three ways to begin a blank book. */
public final class WelcomeModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable begun;
  private final ObservableList<String> faults = FXCollections.observableArrayList();
  private final ObservableList<String> faultsSeen = FXCollections.unmodifiableObservableList(faults);
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);

  /** @param begun what follows once the book is begun */
  public WelcomeModel(Studio studio, Work work, Status status, Runnable begun) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.begun = begun;
  }

  /** What is wrong with the stock file that was chosen last; nothing of it was taken. */
  ObservableList<String> faults() {
    return faultsSeen;
  }

  /** Whether something is being brought in. */
  ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Begins with the sample studio. */
  void sample() {
    begin(Say.text("Bringing in the sample studio."), _ -> {
      SampleStudio.fill(studio);
      return Say.text("The sample studio is on the shelf.");
    });
  }

  /** Begins with a stock file, all of it or nothing. */
  void stockFile(Path file) {
    begin(Say.text("Bringing in {0}.", file.getFileName()), progress -> {
      Receive.Delivery came = new Receive(studio).file(file.getFileName().toString(), TextFile.read(file), progress);
      return Say.count(came.received(), "Received {0} skein from {1}.", "Received {0} skeins from {1}.", file.getFileName());
    });
  }

  /** Begins with nothing. */
  void blankBook() {
    begun.run();
  }

  private void begin(String words, Underway.Errand<String> way) {
    faults.clear();
    busy.set(true);
    status.underway().run(work, words, way, this::done, this::refused);
  }

  private void done(String words) {
    busy.set(false);
    status.done(words);
    begun.run();
  }

  private void refused(Exception trouble) {
    busy.set(false);
    if (trouble instanceof BadInput bad) {
      faults.setAll(bad.faults());
      status.wrong(Say.text("Nothing was taken from the file; what is wrong with it is listed above."));
    } else {
      status.wrong(trouble);
    }
  }
}
