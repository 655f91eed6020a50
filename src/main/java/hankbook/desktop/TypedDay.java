package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A day as it is being typed: the text stays as it is, with what is wrong with it beside. */
final class TypedDay {
  private static final Pattern FOUR_DIGIT_YEAR = Pattern.compile("(?!0000)\\d{4}-\\d{2}-\\d{2}");

  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<LocalDate>> day = new ReadOnlyObjectWrapper<>(Optional.empty());

  TypedDay() {
    text.subscribe(this::read);
  }

  StringProperty textProperty() {
    return text;
  }

  /** What is wrong with the text, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** The day, where the text is one. */
  Optional<LocalDate> day() {
    return day.get();
  }

  ReadOnlyObjectProperty<Optional<LocalDate>> dayProperty() {
    return day.getReadOnlyProperty();
  }

  private void read(String typed) {
    Optional<LocalDate> found = parsed(typed.strip());
    message.set(found.isPresent() || typed.isBlank() ? "" : Say.text("Wanted: {0}.", Say.text("a day such as 2026-12-20")));
    day.set(found);
  }

  /** The day that a text without blanks around it is; empty where it is none. */
  static Optional<LocalDate> parsed(String typed) {
    try {
      return FOUR_DIGIT_YEAR.matcher(typed).matches() ? Optional.of(LocalDate.parse(typed)) : Optional.empty();
    } catch (DateTimeParseException noSuchDay) {
      return Optional.empty();
    }
  }
}
