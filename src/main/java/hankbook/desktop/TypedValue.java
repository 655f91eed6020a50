package hankbook.desktop;

import hankbook.measure.Unreadable;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A value as it is being typed: the text stays as it is, with what is wrong with it beside. */
final class TypedValue<T> {
  private final Function<String, T> reader;
  private final Runnable changed;
  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private Optional<T> value = Optional.empty();

  /**
   * @param reader throws {@link Unreadable} where a text is none
   * @param changed is run after every change of the text
   */
  TypedValue(Function<String, T> reader, Runnable changed) {
    this.reader = reader;
    this.changed = changed;
    text.subscribe((_, typed) -> {
      read(typed);
      changed.run();
    });
  }

  StringProperty textProperty() {
    return text;
  }

  /** What is wrong with the text, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** The value; empty where nothing is typed, or what is typed is none. */
  Optional<T> value() {
    return value;
  }

  boolean isBad() {
    return !message.get().isEmpty();
  }

  /** Reads the text once more, where it may mean something else by now. */
  void again() {
    read(text.get());
    changed.run();
  }

  private void read(String typed) {
    try {
      value = typed.isBlank() ? Optional.empty() : Optional.of(reader.apply(typed));
      message.set("");
    } catch (Unreadable unreadable) {
      value = Optional.empty();
      message.set(Wording.wanted(unreadable));
    }
  }
}
