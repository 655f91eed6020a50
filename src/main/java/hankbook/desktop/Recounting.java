package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.studio.Recount;
import hankbook.studio.Studio;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Measuring the chosen skein again. What is measured is the whole skein: what is set aside is still wound on it. */
public final class Recounting {
  private final Studio studio;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final TypedLength found = new TypedLength();
  private final StringProperty note = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param after what follows once it is written down */
  public Recounting(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.after = after;
    act = new Act(work);
    found.lengthProperty().subscribe(length -> changed());
    note.subscribe(text -> changed());
  }

  Act act() {
    return act;
  }

  TypedLength found() {
    return found;
  }

  StringProperty noteProperty() {
    return note;
  }

  /** What the typed length changes. */
  ReadOnlyStringProperty readingProperty() {
    return reading.getReadOnlyProperty();
  }

  /** Turns to a skein, or to none; what was typed for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      clear();
      act.renew();
    }
    judge();
  }

  /** Writes down what was found. */
  void record() {
    if (act.isPossible()) {
      SkeinRow row = skein.orElseThrow();
      Length whole = found.length().orElseThrow();
      String how = note.get().strip();
      act.attempt(id -> new Recount(studio).skein(id, row.code(), whole, how), this::clear, () -> recorded(row.code(), whole), status::wrong);
    }
  }

  private void recorded(String code, Length whole) {
    status.done("Measured " + code + " again: " + Wording.metres(whole) + ".");
    after.run();
  }

  private void clear() {
    found.textProperty().set("");
    note.set("");
  }

  private void changed() {
    act.renew();
    judge();
  }

  private void judge() {
    Optional<Length> whole = skein.flatMap(row -> found.length());
    Length aside = skein.map(row -> row.reserved().length()).orElse(Length.ZERO);
    Length before = skein.map(row -> row.free().length().plus(aside)).orElse(Length.ZERO);
    act.judge(whole.map(length -> whyNot(length, before, aside)).orElse("Type what it measures now."));
    reading.set(whole.filter(length -> act.isPossible()).map(length -> difference(length.minus(before))).orElse(""));
  }

  private static String whyNot(Length whole, Length before, Length aside) {
    if (whole.compareTo(aside) < 0) {
      return "That is less than the " + Wording.metres(aside) + " set aside; release those first.";
    }
    return whole.equals(before) ? "That is what the ledger says already." : "";
  }

  private static String difference(Length difference) {
    return difference.isNegative()
        ? Wording.metres(difference.negated()) + " less than the ledger says."
        : Wording.metres(difference) + " more than the ledger says.";
  }
}
