package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Purchases;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The purchases of the ledger, the one that is chosen, the form for another one and the form by which one is corrected. */
public final class PurchasesModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Latest latest = new Latest();
  private final PurchaseForm another;
  private final PurchaseForm correction;
  private final Act correct;
  private final Act takeBack;
  private final StringProperty reason = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper summary = new ReadOnlyStringWrapper("");
  private final ObservableList<PurchaseRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<PurchaseRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());

  /** @param after what follows whatever was written down: skeins cost something else then */
  public PurchasesModel(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    another = new PurchaseForm(studio, work, status, this::moved);
    correction = new PurchaseForm(studio, work, status, this::moved);
    correct = new Act(work);
    takeBack = new Act(work);
    reason.subscribe(_ -> judge());
    correction.halfTypedProperty().subscribe(_ -> judge());
  }

  /** Every purchase, newest first. */
  ObservableList<PurchaseRow> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  ReadOnlyObjectProperty<Optional<PurchaseRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** How many there are, and how many skeins are in none. */
  ReadOnlyStringProperty summaryProperty() {
    return summary.getReadOnlyProperty();
  }

  /** The form by which another one is entered. */
  PurchaseForm another() {
    return another;
  }

  /** The form by which one is corrected. */
  PurchaseForm correction() {
    return correction;
  }

  /** Why the chosen one is taken back. */
  StringProperty reasonProperty() {
    return reason;
  }

  Act correctAct() {
    return correct;
  }

  Act takeBackAct() {
    return takeBack;
  }

  /** Whether something is typed in a form that is not in the ledger. */
  BooleanExpression halfTyped() {
    return Bindings.or(another.halfTypedProperty(), correction.halfTypedProperty());
  }

  /** Whether a purchase is being corrected or taken back, half typed. */
  boolean isBegun() {
    return correction.halfTypedProperty().get() || !reason.get().isBlank();
  }

  /** Asks the ledger anew; what is typed stays. */
  public void refresh() {
    work.run(() -> PurchaseGround.of(studio), latest.only(this::show), status::wrong);
  }

  private void show(PurchaseGround ground) {
    OptionalInt number = chosen.get().map(row -> OptionalInt.of(row.number())).orElse(OptionalInt.empty());
    rows.setAll(ground.purchases().stream().map(PurchaseRow::of).toList());
    chosen.set(rows.stream().filter(row -> number.isPresent() && row.number() == number.getAsInt()).findFirst());
    another.standOn(ground);
    correction.standOn(ground);
    long unpaid = ground.skeins().stream().filter(skein -> skein.isFreeFor(OptionalInt.empty())).count();
    summary.set(Say.count(rows.size(), "{0} purchase", "{0} purchases") + (unpaid == 0 ? "" : "; " + Say.count(unpaid, "{0} skein is in none", "{0} skeins are in none")));
    judge();
  }

  /** Chooses a purchase, or with none the form for another one. */
  void choose(Optional<PurchaseRow> row) {
    boolean other = !row.map(PurchaseRow::number).equals(chosen.get().map(PurchaseRow::number));
    chosen.set(row);
    if (other) {
      reason.set("");
    }
    judge();
  }

  /** Turns to the purchase with a number. */
  void open(int number) {
    work.run(() -> PurchaseGround.of(studio), latest.only(ground -> {
      show(ground);
      rows.stream().filter(row -> row.number() == number).findFirst().ifPresent(row -> choose(Optional.of(row)));
    }), status::wrong);
  }

  /** Begins to correct the chosen purchase. */
  void correct() {
    if (correct.isPossible()) {
      correction.correct(chosen.get().orElseThrow().purchased());
    }
  }

  /** Takes the chosen purchase back. */
  void takeBack() {
    if (takeBack.isPossible()) {
      int number = chosen.get().orElseThrow().number();
      String why = reason.get().strip();
      takeBack.attempt(_ -> new Purchases(studio).takeBack(number, why), () -> reason.set(""), () -> takenBack(number), status::wrong);
    }
  }

  private void takenBack(int number) {
    status.done(Say.text("Took back purchase {0}. Its skeins cost again what was said before it.", number));
    moved();
  }

  private void moved() {
    refresh();
    after.run();
  }

  private void judge() {
    takeBack.renew();
    String why = chosen.get().map(row -> row.stands() ? "" : Say.text("It was taken back.")).orElse(Say.text("Choose a purchase."));
    List<Integer> begun = correction.correctedProperty().get().filter(_ -> correction.halfTypedProperty().get()).map(one -> one.kept().number()).stream().toList();
    correct.judge(why.isEmpty() && !begun.isEmpty() ? Say.text("Purchase {0} is being corrected; enter that first, or leave it.", begun.getFirst()) : why);
    takeBack.judge(why.isEmpty() && reason.get().isBlank() ? Say.text("Say why it is taken back.") : why);
  }
}
