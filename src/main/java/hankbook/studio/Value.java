package hankbook.studio;

import hankbook.allot.Setting;
import hankbook.cost.PaidFor;
import hankbook.cost.Valuation;
import hankbook.cost.ValueMethod;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Says what the yarn in the house is worth, now or at the end of a day. What was paid for a skein and where it lies are as they were last described, whatever
 * the day; the metres are as the entries dated up to it leave them.
 */
public final class Value {
  private final Studio studio;

  public Value(Studio studio) {
    this.studio = studio;
  }

  /**
   * The stock in each currency that was paid in, that of the house first; no two of them are ever added.
   *
   * @param on the day at whose end; empty for all that the ledger holds
   * @param method empty for the one that the settings name
   * @return at least that of the house
   */
  public List<ValuedStock> stock(Optional<LocalDate> on, Optional<ValueMethod> method) {
    return stock(on, method, Progress.UNHEARD);
  }

  /** The same, for one who watches the entries being read and may stop it. */
  public List<ValuedStock> stock(Optional<LocalDate> on, Optional<ValueMethod> method, Progress progress) {
    return studio.read(session -> stock(session, on, method, progress));
  }

  private static List<ValuedStock> stock(Session session, Optional<LocalDate> on, Optional<ValueMethod> method, Progress progress) {
    ValueMethod how = method.orElseGet(() -> ValueMethod.parse(Settings.judgement(session).text(Setting.VALUE_METHOD)));
    List<Entry> entries = session.entries().chain().stream().map(ChainedEntry::entry).toList();
    Map<String, Skein> skeins = new HashMap<>();
    Shelf.everySkein(session).forEach(held -> skeins.put(held.skein().code(), held.skein()));
    List<ValuedStock> stocks = new ArrayList<>();
    List<CurrencyUnit> currencies = currencies(session, skeins);
    AtomicLong read = new AtomicLong();
    Predicate<Entry> counted = entry -> {
      progress.at(read.getAndIncrement(), (long) entries.size() * currencies.size());
      return on.isEmpty() || !entry.date().isAfter(on.get());
    };
    for (CurrencyUnit currency : currencies) {
      stocks.add(in(currency, entries, skeins, on, counted, how));
    }
    return stocks;
  }

  private static List<CurrencyUnit> currencies(Session session, Map<String, Skein> skeins) {
    CurrencyUnit home = HomeCurrency.of(session);
    List<CurrencyUnit> currencies = new ArrayList<>(List.of(home));
    skeins.values().stream()
        .flatMap(skein -> skein.cost().stream())
        .map(Money::getCurrencyUnit)
        .filter(other -> !other.equals(home))
        .distinct()
        .sorted(Comparator.comparing(CurrencyUnit::getCode))
        .forEach(currencies::add);
    return currencies;
  }

  private static ValuedStock in(
      CurrencyUnit currency, List<Entry> entries, Map<String, Skein> skeins, Optional<LocalDate> on, Predicate<Entry> counted, ValueMethod how) {
    Map<String, Money> paid = new HashMap<>();
    skeins.values().forEach(skein -> skein.cost().filter(cost -> cost.getCurrencyUnit().equals(currency)).ifPresent(cost -> paid.put(skein.code(), cost)));
    Valuation valuation =
        new Valuation(currency, entries, paid, counted, code -> Objects.requireNonNull(skeins.get(code)).yarn());
    Money all = paid.values().stream().reduce(Money.zero(currency), Money::plus);
    return new ValuedStock(on, valuation.by(how), PaidFor.of(valuation.book(), all), skeins);
  }
}
