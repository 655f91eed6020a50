package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.PartWith;
import hankbook.studio.Studio;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Letting some of the chosen skein leave the house: sold, given or lost. */
public final class Parting {
  private final Studio studio;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final Typed<Length> length = new Typed<>(Length::parse);
  private final StringProperty note = new SimpleStringProperty("");
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param after what follows once it is written down */
  public Parting(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.after = after;
    act = new Act(work);
    length.valueProperty().subscribe(gone -> changed());
    note.subscribe(text -> changed());
  }

  Act act() {
    return act;
  }

  Typed<Length> length() {
    return length;
  }

  StringProperty noteProperty() {
    return note;
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !length.isBlank() || !note.get().isBlank();
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

  /** Writes down that it left. */
  void record() {
    if (act.isPossible()) {
      String code = skein.orElseThrow().code();
      Length gone = length.value().orElseThrow();
      String whereTo = note.get().strip();
      act.attempt(id -> new PartWith(studio).skein(id, code, gone, whereTo), this::clear, () -> recorded(code, gone), status::wrong);
    }
  }

  private void recorded(String code, Length gone) {
    status.done(Say.text("Parted with {0} of {1}.", Wording.yarn(gone), code));
    after.run();
  }

  private void clear() {
    length.textProperty().set("");
    note.set("");
  }

  private void changed() {
    act.renew();
    judge();
  }

  private void judge() {
    act.judge(whyNot(skein.map(row -> row.free().length()).orElse(Length.ZERO)));
  }

  private String whyNot(Length free) {
    if (!free.isPositive()) {
      return Say.text("None of it is free to part with.");
    }
    if (length.value().isEmpty()) {
      return Say.text("Type how much of it leaves.");
    }
    Length gone = length.value().get();
    if (!gone.isPositive()) {
      return Say.text("Type a length over zero.");
    }
    return gone.compareTo(free) > 0 ? Say.text("Only {0} of it are free.", Wording.yarn(free)) : "";
  }
}
