package hankbook.desktop;

import hankbook.studio.Progress;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What goes on that may take long, each with how far it is and a way to stop it. */
public final class Underway {
  /** Something long: it says how far it is, and by that learns whether it is to stop. */
  interface Errand<T> {
    T run(Progress progress) throws Exception;
  }

  private final ObservableList<Going> all = FXCollections.observableArrayList();
  private final ObservableList<Going> seen = FXCollections.unmodifiableObservableList(all);

  /** Those that go on now, the newest first. */
  ObservableList<Going> all() {
    return seen;
  }

  /**
   * Does an errand away from the screen and shows it meanwhile.
   *
   * @param words what goes on, as a sentence
   * @param otherwise is told of a stopped one too, as of a {@link java.util.concurrent.CancellationException}
   * @return by which it can be stopped
   */
  <T> Going run(Work work, String words, Errand<T> errand, Consumer<T> then, Consumer<Exception> otherwise) {
    Going going = new Going(words, work.here());
    all.addFirst(going);
    work.run(
        () -> errand.run(going),
        answer -> {
          all.remove(going);
          then.accept(answer);
        },
        trouble -> {
          all.remove(going);
          otherwise.accept(trouble);
        });
    return going;
  }
}
