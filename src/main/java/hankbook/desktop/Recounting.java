package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.NotDone;
import hankbook.studio.Recount;
import hankbook.studio.Studio;
import hankbook.yarn.Kept;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
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
  private final RecountFields fields = new RecountFields();
  private final StringProperty note = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper ledgerSays = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper wouldSay = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param after what follows once it is written down */
  public Recounting(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.after = after;
    act = new Act(work);
    fields.subscribe(this::changed);
    note.subscribe(text -> changed());
  }

  Act act() {
    return act;
  }

  RecountFields fields() {
    return fields;
  }

  StringProperty noteProperty() {
    return note;
  }

  /** What the ledger says of it now, and how surely. */
  ReadOnlyStringProperty ledgerSaysProperty() {
    return ledgerSays.getReadOnlyProperty();
  }

  /** What it would say, and how surely; empty as long as that is not known. */
  ReadOnlyStringProperty wouldSayProperty() {
    return wouldSay.getReadOnlyProperty();
  }

  /** What changes by what is typed. */
  ReadOnlyStringProperty readingProperty() {
    return reading.getReadOnlyProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !note.get().isBlank() || fields.isBegun();
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
      RecountFields.Found found = fields.found(row.skein());
      String how = note.get().strip();
      act.attempt(id -> write(id, row.code(), found, how), this::clear, () -> recorded(row.code(), found.length().orElseThrow()), status::wrong);
    }
  }

  private void write(UUID id, String code, RecountFields.Found found, String how) throws NotDone {
    Recount recount = new Recount(studio);
    Measures measures = found.measures();
    if (measures.weighing().isPresent()) {
      recount.weighed(id, code, measures.weighing().get(), how);
    } else if (measures.turns().isPresent()) {
      recount.counted(id, code, measures.turns().get(), how);
    } else {
      recount.skein(id, code, found.length().orElseThrow(), how);
    }
  }

  private void recorded(String code, Length whole) {
    status.done(Say.text("Measured {0} again: {1}.", code, Wording.yarn(whole)));
    after.run();
  }

  private void clear() {
    fields.begin(skein.map(SkeinRow::skein));
    note.set("");
  }

  private void changed() {
    act.renew();
    judge();
  }

  private void judge() {
    wouldSay.set("");
    reading.set("");
    ledgerSays.set(skein.map(row -> Wording.yarn(before(row), row.uncertainty().length())).orElse(""));
    if (skein.isEmpty()) {
      act.judge(Say.text("Choose a skein."));
      return;
    }
    SkeinRow row = skein.get();
    RecountFields.Found found = fields.found(row.skein());
    act.judge(found.length().map(whole -> whyNot(row, whole)).orElse(found.whyNot()));
    if (act.isPossible()) {
      tell(row, found, found.length().orElseThrow());
    }
  }

  private void tell(SkeinRow row, RecountFields.Found found, Length whole) {
    Length sureness = sureness(row, found, whole);
    int surer = row.uncertainty().length().compareTo(sureness);
    boolean given = fields.way.get() == RecountWay.LENGTH || row.uncertainty().length().isZero();
    wouldSay.set(Wording.yarn(whole, sureness));
    reading.set(difference(whole.minus(before(row))) + (given || surer == 0 ? "" : " " + (surer > 0 ? Say.text("It is known surer then.") : Say.text("It is known less surely then."))));
  }

  /** As the shelf will tell it: by how it was found, or by how it was known before where only a length is given. */
  private static Length sureness(SkeinRow row, RecountFields.Found found, Length whole) {
    Skein skein = row.skein();
    boolean lengthAlone = found.measures().weighing().isEmpty() && found.measures().turns().isEmpty();
    Kept kept = lengthAlone
        ? new Kept(whole, Optional.empty(), skein.kept().flatMap(Kept::again))
        : new Kept(whole, Optional.of(whole), Optional.of(found.measures()));
    return Uncertainty.of(List.of(skein.withKept(kept, skein.opened())), row.doubts()).combined();
  }

  private static Length before(SkeinRow row) {
    return row.free().length().plus(row.reserved().length());
  }

  private String whyNot(SkeinRow row, Length whole) {
    Length aside = row.reserved().length();
    if (whole.compareTo(aside) < 0) {
      return Say.text("That is less than the {0} set aside; release those first.", Wording.yarn(aside));
    }
    return fields.way.get() == RecountWay.LENGTH && whole.equals(before(row)) ? Say.text("That is what the ledger says already.") : "";
  }

  private static String difference(Length difference) {
    if (difference.isZero()) {
      return Say.text("Just what the ledger says.");
    }
    return difference.isNegative()
        ? Say.text("{0} less than the ledger says.", Wording.yarn(difference.negated()))
        : Say.text("{0} more than the ledger says.", Wording.yarn(difference));
  }
}
