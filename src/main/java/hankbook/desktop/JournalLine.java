package hankbook.desktop;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A line of the journal: the number of an entry, and the entry itself as soon as it was read. */
final class JournalLine {
  private final long number;
  private final ReadOnlyObjectWrapper<Optional<JournalRow>> row = new ReadOnlyObjectWrapper<>(Optional.empty());

  JournalLine(long number) {
    this.number = number;
  }

  long number() {
    return number;
  }

  /** The entry; empty until it was read. */
  ReadOnlyObjectProperty<Optional<JournalRow>> rowProperty() {
    return row.getReadOnlyProperty();
  }

  void show(JournalRow read) {
    row.set(Optional.of(read));
  }
}
