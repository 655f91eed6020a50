package hankbook.desktop;

import hankbook.studio.Progress;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * An answer that is kept up to date while someone looks at it. A question that was overtaken is not worked out any more, and an answer that
 * comes late is dropped.
 */
final class LiveAnswer<T> {
  /** How an errand is sent, and what stops it. */
  private interface Sending<T> {
    Runnable send(Underway.Errand<Optional<T>> errand, Consumer<Optional<T>> then, Consumer<Exception> otherwise);
  }

  private final Sending<T> sending;
  private final Supplier<Optional<Underway.Errand<T>>> question;
  private final Function<Exception, String> words;
  private final AtomicLong asked = new AtomicLong();
  private final ReadOnlyObjectWrapper<Optional<T>> found = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper reckoning = new ReadOnlyBooleanWrapper(false);
  private boolean watched;
  private Runnable overtaken = () -> {};

  /**
   * @param question as things stand; empty where there is nothing to ask
   * @param words for what goes wrong
   */
  LiveAnswer(Work work, Supplier<Optional<Callable<T>>> question, Function<Exception, String> words) {
    this(
        (errand, then, otherwise) -> {
          work.run(() -> errand.run(Progress.UNHEARD), then, otherwise);
          return () -> {};
        },
        () -> question.get().map(asked -> _ -> asked.call()), words);
  }

  private LiveAnswer(Sending<T> sending, Supplier<Optional<Underway.Errand<T>>> question, Function<Exception, String> words) {
    this.sending = sending;
    this.question = question;
    this.words = words;
  }

  /**
   * An answer that may take long: what goes on is shown, and can be stopped.
   *
   * @param says what goes on, as a sentence
   */
  static <T> LiveAnswer<T> slow(Work work, Status line, Supplier<String> says, Supplier<Optional<Underway.Errand<T>>> question) {
    Sending<T> shown = (errand, then, otherwise) -> line.underway().run(work, says.get(), errand, then, otherwise)::stop;
    return new LiveAnswer<>(shown, question, Status::words);
  }

  ReadOnlyObjectProperty<Optional<T>> foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** Why there is no answer, or empty. */
  ReadOnlyStringProperty troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** Whether the answer shown is to an earlier question and a new one is on its way. */
  ReadOnlyBooleanProperty reckoningProperty() {
    return reckoning.getReadOnlyProperty();
  }

  /** Says whether someone looks; only then is anything worked out. */
  void watch(boolean now) {
    watched = now;
    ask();
  }

  /** Asks anew. */
  void ask() {
    long mine = asked.incrementAndGet();
    overtaken.run();
    overtaken = () -> {};
    Optional<Underway.Errand<T>> errand = question.get();
    reckoning.set(watched && errand.isPresent());
    if (errand.isEmpty()) {
      show(Optional.empty(), "");
    } else if (watched) {
      overtaken = sending.send(progress -> asked.get() == mine ? Optional.of(errand.get().run(progress)) : Optional.<T>empty(), answer -> answered(mine, answer), fault -> failed(mine, fault));
    }
  }

  private void answered(long mine, Optional<T> answer) {
    if (asked.get() == mine) {
      show(answer, "");
      reckoning.set(false);
    }
  }

  private void failed(long mine, Exception fault) {
    if (asked.get() == mine) {
      show(Optional.empty(), words.apply(fault));
      reckoning.set(false);
    }
  }

  private void show(Optional<T> answer, String why) {
    trouble.set(why);
    found.set(answer);
  }
}
