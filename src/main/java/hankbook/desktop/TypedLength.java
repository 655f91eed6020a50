package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A length as it is being typed: the text stays as it is, with what is wrong with it beside. */
final class TypedLength {
  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private Optional<Length> length = Optional.empty();

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
    return length;
  }

  private void read(String typed) {
    length = Optional.empty();
    message.set("");
    if (typed.isBlank()) {
      return;
    }
    try {
      length = Optional.of(Length.parse(typed));
    } catch (Unreadable unreadable) {
      message.set(Wording.wanted(unreadable));
    }
  }
}
