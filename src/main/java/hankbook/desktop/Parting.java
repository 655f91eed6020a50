package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.studio.PartWith;
import hankbook.studio.Studio;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Letting some of the chosen skein leave the house: sold, given or lost. */
public final class Parting {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final TypedLength length = new TypedLength();
  private final StringProperty note = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper(false);
  private Optional<SkeinRow> skein = Optional.empty();
  private UUID id = UUID.randomUUID();

  /** @param after what follows once it is written down */
  public Parting(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    length.lengthProperty().subscribe(gone -> judge());
  }

  TypedLength length() {
    return length;
  }

  StringProperty noteProperty() {
    return note;
  }

  /** Why it cannot be written down as it stands, or empty. */
  ReadOnlyStringProperty whyNotProperty() {
    return whyNot.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty possibleProperty() {
    return possible.getReadOnlyProperty();
  }

  /** Turns to a skein, or to none; what was typed for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      clear();
    }
    judge();
  }

  /** Writes down that it left. */
  void record() {
    judge();
    if (possible.get()) {
      String code = skein.orElseThrow().code();
      Length gone = length.length().orElseThrow();
      UUID mine = id;
      String why = note.get().strip();
      work.run(
          () -> {
            new PartWith(studio).skein(mine, code, gone, why);
            return code;
          },
          done -> {
            status.done("Parted with " + Wording.metres(gone) + " of " + done + ".");
            clear();
            after.run();
          },
          status::wrong);
    }
  }

  private void clear() {
    id = UUID.randomUUID();
    length.textProperty().set("");
    note.set("");
  }

  private void judge() {
    Length free = skein.map(row -> row.free().length()).orElse(Length.ZERO);
    String why = whyNot(free);
    whyNot.set(why);
    possible.set(why.isEmpty());
  }

  private String whyNot(Length free) {
    if (!free.isPositive()) {
      return "None of it is free to part with.";
    }
    if (length.length().isEmpty()) {
      return "Type how much of it leaves.";
    }
    Length gone = length.length().get();
    if (!gone.isPositive()) {
      return "Type a length over zero.";
    }
    return gone.compareTo(free) > 0 ? "Only " + Wording.metres(free) + " of it are free." : "";
  }
}
