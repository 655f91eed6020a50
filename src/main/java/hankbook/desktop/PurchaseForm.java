package hankbook.desktop;

import hankbook.cost.KeptPurchase;
import hankbook.cost.Purchase;
import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.joda.money.CurrencyUnit;

/**
 * A purchase as it is being typed, another one or one that is being corrected, with what it would come to. What is typed stays, whatever else is looked at,
 * until it is entered or cleared.
 */
final class PurchaseForm {
  private final Studio studio;
  private final Purchases purchases;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final LiveAnswer<Purchased> landing;
  private final PurchaseFields fields = new PurchaseFields(this::whyNoSkein, this::changed);
  private final StringProperty reason = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<PurchaseGround> ground = new ReadOnlyObjectWrapper<>(PurchaseGround.UNKNOWN);
  private final ReadOnlyObjectWrapper<Optional<Purchased>> corrected = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper foreign = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper rateName = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper homeWords = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper halfTyped = new ReadOnlyBooleanWrapper(false);
  private PurchaseTyped begun = new PurchaseTyped(Map.of(), List.of());
  private PurchaseReading reading = new PurchaseReading(begun, PurchaseGround.UNKNOWN.home(), false);

  /** @param after what follows once it is entered */
  PurchaseForm(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.purchases = new Purchases(studio);
    this.status = status;
    this.after = after;
    act = new Act(work);
    landing = new LiveAnswer<>(work, this::question, PurchaseForm::why);
    landing.watch(true);
    clear();
    reason.subscribe((_, _) -> changed());
    landing.foundProperty().subscribe(_ -> hinder());
    landing.reckoningProperty().subscribe(_ -> hinder());
  }

  PurchaseFields fields() {
    return fields;
  }

  /** Why it is corrected. */
  StringProperty reasonProperty() {
    return reason;
  }

  /** The purchase that is corrected; empty where another one is entered. */
  ReadOnlyObjectProperty<Optional<Purchased>> correctedProperty() {
    return corrected.getReadOnlyProperty();
  }

  /** What it would come to. */
  LiveAnswer<Purchased> landing() {
    return landing;
  }

  /** What the ledger has, as it was last asked. */
  ReadOnlyObjectProperty<PurchaseGround> groundProperty() {
    return ground.getReadOnlyProperty();
  }

  /** Whether it needs a rate. */
  ReadOnlyBooleanProperty foreignProperty() {
    return foreign.getReadOnlyProperty();
  }

  /** What the rate is of. */
  ReadOnlyStringProperty rateNameProperty() {
    return rateName.getReadOnlyProperty();
  }

  /** That this purchase will decide the currency of the ledger, or empty. */
  ReadOnlyStringProperty homeWordsProperty() {
    return homeWords.getReadOnlyProperty();
  }

  /** Whether something is typed that is not in the ledger. */
  ReadOnlyBooleanProperty halfTypedProperty() {
    return halfTyped.getReadOnlyProperty();
  }

  Act act() {
    return act;
  }

  /** Shows what the ledger has now; what is typed stays. */
  void standOn(PurchaseGround now) {
    ground.set(now);
    changed();
  }

  /** Begins another purchase, of today. */
  void clear() {
    corrected.set(Optional.empty());
    begin(new PurchaseTyped(Map.of("date", studio.today().toString()), List.of(PurchaseTyped.Line.BLANK)));
  }

  /** Begins to correct a purchase. */
  void correct(Purchased purchased) {
    corrected.set(Optional.of(purchased));
    begin(PurchaseTexts.of(purchased.kept().landed().purchase()));
  }

  /** What is typed and not entered, by the names of the fields; empty where nothing is. */
  Map<String, String> typed() {
    return halfTyped.get() && corrected.get().isEmpty() ? PurchasePutBy.texts(fields.typed()) : Map.of();
  }

  /** Types again what was put by. */
  void type(Map<String, String> texts) {
    fields.fill(PurchasePutBy.of(texts));
  }

  private void begin(PurchaseTyped typed) {
    begun = typed;
    reason.set("");
    fields.fill(typed);
  }

  /** Enters what is typed. */
  void enter() {
    if (act.isPossible()) {
      Purchase purchase = reading.purchase().orElseThrow();
      OptionalInt number = number();
      Optional<KeptPurchase> seen = corrected.get().map(Purchased::kept);
      String why = reason.get().strip();
      Act.Deed deed = _ -> {
        if (seen.isPresent()) {
          purchases.correct(seen.get().number(), purchase, why, seen.get().version());
        } else {
          purchases.add(purchase);
        }
      };
      String landed = landing.foundProperty().get().map(found -> ": " + Wording.money(found.kept().landed().total())).orElse("");
      String what = number.isPresent() ? Say.text("Corrected purchase {0}", number.getAsInt()) : Say.text("Entered the purchase of {0}", purchase.date());
      act.attempt(deed, this::clear, () -> entered(Say.count(purchase.skeins().size(), "{1} for {0} skein.", "{1} for {0} skeins.", what + landed)), status::wrong);
    }
  }

  private void entered(String what) {
    status.done(what);
    after.run();
  }

  /** A purchase that is corrected stays in the currency that it was entered into. */
  private CurrencyUnit home() {
    return corrected.get().map(purchased -> purchased.kept().landed().home()).orElseGet(() -> ground.get().home());
  }

  private OptionalInt number() {
    return corrected.get().map(purchased -> OptionalInt.of(purchased.kept().number())).orElse(OptionalInt.empty());
  }

  private void changed() {
    act.renew();
    PurchaseTyped typed = fields.typed();
    reading = new PurchaseReading(typed, home(), ground.get().decided());
    fields.say(ground.get().skeins().stream().filter(skein -> skein.isFreeFor(number())).toList(), reading);
    foreign.set(reading.isForeign());
    rateName.set(Say.text("1 {0} in {1}", typed.text("currency").toUpperCase(Locale.ROOT), home()));
    homeWords.set(ground.get().decided() ? "" : Say.text("Your first purchase decides the currency in which this ledger reckons."));
    halfTyped.set(!typed.equals(begun) || !reason.get().isBlank());
    landing.ask();
    hinder();
  }

  private Optional<Callable<Purchased>> question() {
    OptionalInt number = number();
    return reading.purchase().map(purchase -> () -> purchases.tried(number, purchase));
  }

  private void hinder() {
    String still = landing.reckoningProperty().get() ? Say.text("It is being reckoned.") : landing.troubleProperty().get();
    String unchanged = corrected.get().isPresent() && fields.typed().equals(begun) ? Say.text("So it stands in the ledger; change what was wrong.") : "";
    act.judge(!unchanged.isEmpty() ? unchanged : reading.whyNot().isEmpty() ? still : reading.whyNot());
  }

  private String whyNoSkein(String code) {
    if (code.isEmpty()) {
      return Say.text("Every skein of the ledger is paid for by a purchase already.");
    }
    Optional<SkeinToPay> known = ground.get().skeins().stream().filter(skein -> skein.code().equalsIgnoreCase(code)).findFirst();
    if (known.filter(SkeinToPay::wound).isPresent()) {
      return known.get().code() + " was wound off another skein and costs what that cost; enter what was paid for that one.";
    }
    return known
        .map(skein -> skein.isFreeFor(number())
            ? Say.text("{0} is in this purchase already.", skein.code())
            : Say.text("{0} was paid for in purchase {1}; correct that one, or take it back.", skein.code(), skein.paidBy().orElse(0)))
        .orElse(Say.text("No skein that is still to be paid for answers to that."));
  }

  private static String why(Exception trouble) {
    return trouble instanceof Unreadable unreadable ? Wording.refused(unreadable) : Status.words(trouble);
  }
}
