package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Rewound;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What both skeins would hold after a winding, reckoned while someone looks; its act waits until that is known for what stands there now. */
final class RewindPreview {
  private final Act act;
  private final ShelfModel shelf;
  private final Supplier<String> missing;
  private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
  private final LiveAnswer<Rewound> tried;

  /**
   * @param missing what is still to be said before it can be tried, or empty
   * @param trial tries it as it stands; is asked for only where nothing is missing
   */
  RewindPreview(Work work, Act act, ShelfModel shelf, Supplier<String> missing, Supplier<Callable<Rewound>> trial) {
    this.act = act;
    this.shelf = shelf;
    this.missing = missing;
    tried = new LiveAnswer<>(work, () -> missing.get().isEmpty() ? Optional.of(trial.get()) : Optional.empty(), Status::words);
    tried.foundProperty().subscribe(this::show);
    tried.troubleProperty().subscribe(_ -> judge());
    tried.reckoningProperty().subscribe(_ -> judge());
  }

  /** A line for each skein, or empty. */
  ReadOnlyStringProperty wordsProperty() {
    return words.getReadOnlyProperty();
  }

  /** Reckons only while someone looks. */
  void watch(boolean looking) {
    tried.watch(looking);
  }

  /** Tries anew what was changed. */
  void ask() {
    act.renew();
    tried.ask();
    judge();
  }

  private void show(Optional<Rewound> found) {
    words.set(found.map(after -> RewoundWords.of(after, shelf.doubts())).orElse(""));
    judge();
  }

  private void judge() {
    String lacks = missing.get();
    String reckoning = tried.reckoningProperty().get() || tried.foundProperty().get().isEmpty() ? Say.text("It is being reckoned.") : "";
    act.judge(!lacks.isEmpty() ? lacks : tried.troubleProperty().get().isEmpty() ? reckoning : tried.troubleProperty().get());
  }
}
