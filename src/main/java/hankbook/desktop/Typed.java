package hankbook.desktop;

import hankbook.measure.Unreadable;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A quantity in a field: what is typed, what it means, and what is wrong with it. Bad text stays as it is. */
final class Typed<T> {
  private final Function<String, T> reader;
  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<T>> value = new ReadOnlyObjectWrapper<>(Optional.empty());

  /** @param reader of what is typed, which throws {@link Unreadable} where it means nothing */
  Typed(Function<String, T> reader) {
    this.reader = reader;
    text.subscribe(this::read);
  }

  StringProperty textProperty() {
    return text;
  }

  /** What is wrong with the text, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** What it means, where it can be read. */
  Optional<T> value() {
    return value.get();
  }

  ReadOnlyObjectProperty<Optional<T>> valueProperty() {
    return value.getReadOnlyProperty();
  }

  boolean isBlank() {
    return text.get().isBlank();
  }

  void set(String typed) {
    text.set(typed);
  }

  private void read(String typed) {
    try {
      value.set(typed.isBlank() ? Optional.empty() : Optional.of(reader.apply(typed)));
      message.set("");
    } catch (Unreadable unreadable) {
      value.set(Optional.empty());
      message.set(Wording.wanted(unreadable));
    }
  }
}
