package hankbook.desktop;

import hankbook.cost.Basis;
import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.Purchase;
import hankbook.cost.PurchaseLine;
import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads what is typed of a purchase field by field, and gathers what is wrong with each and what is still wanted. */
final class PurchaseReading {
  private final PurchaseTyped typed;
  private final Map<String, String> messages = new LinkedHashMap<>();
  private final List<String> missing = new ArrayList<>();
  private final boolean foreign;
  private final Optional<Purchase> purchase;

  /**
   * @param home the currency where none is typed
   * @param decided whether the ledger reckons in it already, so that another one needs a rate
   */
  PurchaseReading(PurchaseTyped typed, CurrencyUnit home, boolean decided) {
    this.typed = typed;
    Optional<CurrencyUnit> currency = typed.text("currency").isEmpty() ? Optional.of(home) : read("currency", AmountTyped::currency);
    foreign = decided && currency.filter(unit -> !unit.equals(home)).isPresent();
    Optional<LocalDate> date = wanted("date", Say.text("the date"), PurchaseReading::day);
    Optional<String> from = read("from", OneLine::of);
    Optional<ExchangeRate> rate = foreign ? rate() : Optional.empty();
    List<Optional<PurchaseLine>> lines = new ArrayList<>();
    for (int i = 0; i < typed.lines().size(); i++) {
      lines.add(line(i, currency.orElse(home)));
    }
    Optional<Charge> carriage = charge("carriage", currency.orElse(home));
    Optional<Charge> duty = charge("duty", currency.orElse(home));
    Optional<Charge> discount = charge("discount", currency.orElse(home));
    purchase = messages.isEmpty() && missing.isEmpty()
        ? built(() -> new Purchase(
            date.orElseThrow(), from.orElseThrow(), currency.orElseThrow(), lines.stream().map(Optional::orElseThrow).toList(), carriage.orElseThrow(),
            duty.orElseThrow(), discount.orElseThrow(), rate))
        : Optional.empty();
  }

  /** The field of a line. */
  static String key(int line, String field) {
    return line + " " + field;
  }

  /** What is typed; empty where not all of it is there or can be read. */
  Optional<Purchase> purchase() {
    return purchase;
  }

  /** Whether it is in another currency than the ledger's, and so needs a rate. */
  boolean isForeign() {
    return foreign;
  }

  /** What is wrong with a field, or empty. */
  String message(String key) {
    return messages.getOrDefault(key, "");
  }

  /** Why it cannot be entered, or empty. */
  String whyNot() {
    if (messages.containsKey("")) {
      return message("");
    }
    if (!messages.isEmpty()) {
      return Say.text("Mend the fields marked above.");
    }
    return missing.isEmpty() ? "" : Say.text("Still wanted: {0}.", String.join(", ", missing));
  }

  private Optional<PurchaseLine> line(int index, CurrencyUnit currency) {
    PurchaseTyped.Line line = typed.lines().get(index);
    boolean one = typed.lines().size() == 1;
    int number = index + 1;
    Optional<String> words = there(line.words(), one
        ? Say.text("what was bought")
        : Say.text("what was bought of line {0}", number)).flatMap(text -> read(key(index, "words"), text, OneLine::of));
    Optional<Money> price =
        there(line.price(), one
            ? Say.text("the price")
            : Say.text("the price of line {0}", number)).flatMap(text -> read(key(index, "price"), text, amount -> AmountTyped.read(amount, currency)));
    Optional<List<String>> skeins = line.skeins().isEmpty() ? lacking(one ? Say.text("the skeins") : Say.text("the skeins of line {0}", number)) : Optional.of(line.skeins());
    return words.flatMap(what -> price.flatMap(paid -> skeins.flatMap(codes -> built(() -> new PurchaseLine(what, paid, codes)))));
  }

  private Optional<Charge> charge(String key, CurrencyUnit currency) {
    Optional<Money> amount = typed.text(key).isEmpty() ? Optional.of(Money.zero(currency)) : read(key, text -> AmountTyped.read(text, currency));
    Basis basis = typed.text(PurchaseTyped.by(key)).isEmpty() ? Basis.VALUE : Basis.parse(typed.text(PurchaseTyped.by(key)));
    return amount.map(money -> new Charge(money, basis));
  }

  private Optional<ExchangeRate> rate() {
    Optional<ExchangeRate> rate = wanted("rate", Say.text("the rate"), text -> ExchangeRate.parse(text, LocalDate.EPOCH));
    Optional<LocalDate> of = wanted("rateDate", Say.text("the day of the rate"), PurchaseReading::day);
    return rate.flatMap(written -> of.map(day -> new ExchangeRate(written.home(), day)));
  }

  private static LocalDate day(String text) {
    return TypedDay.parsed(text).orElseThrow(() -> new Unreadable(text, "a day such as 2026-03-14"));
  }

  private <T> Optional<T> wanted(String key, String name, Function<String, T> reader) {
    return there(typed.text(key), name).flatMap(text -> read(key, text, reader));
  }

  private Optional<String> there(String text, String name) {
    return text.isEmpty() ? lacking(name) : Optional.of(text);
  }

  private <T> Optional<T> lacking(String name) {
    missing.add(name);
    return Optional.empty();
  }

  private <T> Optional<T> read(String key, Function<String, T> reader) {
    return read(key, typed.text(key), reader);
  }

  private <T> Optional<T> read(String key, String text, Function<String, T> reader) {
    try {
      return Optional.of(reader.apply(text));
    } catch (Unreadable unreadable) {
      messages.put(key, Wording.wanted(unreadable));
      return Optional.empty();
    }
  }

  /** What does not fit together is said for all of it. */
  private <T> Optional<T> built(Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (Unreadable unreadable) {
      messages.put("", Wording.refused(unreadable));
      return Optional.empty();
    }
  }
}
