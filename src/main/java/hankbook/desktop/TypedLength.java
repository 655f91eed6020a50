package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A length as it is being typed: the text stays as it is, with what is wrong with it beside. */
final class TypedLength {
  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<Length>> length = new ReadOnlyObjectWrapper<>(Optional.empty());

  TypedLength() {
    text.subscribe(this::read);
  }

  StringProperty textProperty() {
    return text;
  }

  /** What is wrong with the text, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** The length, where the text is one. */
  Optional<Length> length() {
    return length.get();
  }

  ReadOnlyObjectProperty<Optional<Length>> lengthProperty() {
    return length.getReadOnlyProperty();
  }

  private void read(String typed) {
    try {
      length.set(typed.isBlank() ? Optional.empty() : Optional.of(Length.parse(typed)));
      message.set("");
    } catch (Unreadable unreadable) {
      length.set(Optional.empty());
      message.set(Wording.wanted(unreadable));
    }
  }
}
