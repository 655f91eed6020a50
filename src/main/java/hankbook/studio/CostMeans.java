package hankbook.studio;

import hankbook.cost.CostBook;
import hankbook.cost.PlanSpent;
import hankbook.cost.Worth;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What is known of costs before anything is costed.
 *
 * @param currency in which it is reckoned; empty where none is set and nothing was paid yet
 * @param worths what is there of each skein for a plan and what was paid for it, in the order it is taken
 * @param spent on the plan so far
 */
record CostMeans(Optional<CurrencyUnit> currency, Map<String, List<Worth>> worths, Optional<PlanSpent> spent) {
  /** What a ledger knows: what is on the plan's loom comes first, then what is set aside for it, then the shelf and what is on order. */
  static CostMeans of(Session session, String plan) {
    return of(session, plan, Set.of());
  }

  /** The same with what is set aside for other plans, which is taken last, as though it were on the shelf. */
  static CostMeans of(Session session, String plan, Set<String> others) {
    List<Place> places = new ArrayList<>(List.of(new Place.Loom(plan), new Place.Reserved(plan), new Place.Shelf(), new Place.Ordered()));
    others.stream().filter(other -> !other.equals(plan)).sorted().map(Place.Reserved::new).forEach(places::add);
    List<Skein> skeins = session.skeins().all();
    Optional<CurrencyUnit> currency = HomeCurrency.decided(session);
    if (currency.isEmpty()) {
      return new CostMeans(currency, Map.of(), Optional.empty());
    }
    Map<String, Money> paid = new HashMap<>();
    skeins.forEach(skein -> skein.cost().filter(cost -> cost.getCurrencyUnit().equals(currency.get())).ifPresent(cost -> paid.put(skein.code(), cost)));
    CostBook book = CostBook.of(currency.get(), session.entries().all().stream().map(RecordedEntry::entry).toList(), paid);
    Map<String, List<Worth>> worths = new HashMap<>();
    paid.keySet().forEach(code -> held(book, code, places).ifPresent(held -> worths.put(code, held)));
    skeins.forEach(skein -> skein.cost().filter(cost -> !cost.getCurrencyUnit().equals(currency.get())).ifPresent(
        cost -> worths.put(skein.code(), List.of(new Worth(Length.ZERO, cost)))));
    return new CostMeans(currency, worths, Optional.of(PlanSpent.of(book, plan)).filter(spent -> !spent.isNothing()));
  }

  private static Optional<List<Worth>> held(CostBook book, String code, List<Place> places) {
    List<Worth> held = new ArrayList<>();
    for (Place place : places) {
      book.worth(code, place::equals).filter(worth -> worth.length().isPositive()).ifPresent(held::add);
    }
    return Optional.of(held).filter(found -> !found.isEmpty());
  }

  /** What a stock file says: what was paid for all that is there of a skein; of one that was begun, for the length on its label. */
  static CostMeans of(List<Skein> stock) {
    Map<String, List<Worth>> worths = new HashMap<>();
    stock.forEach(skein -> skein.cost().ifPresent(cost -> worths.put(skein.code(), List.of(left(skein, cost)))));
    return new CostMeans(HomeCurrency.mostPaid(stock), worths, Optional.empty());
  }

  private static Worth left(Skein skein, Money cost) {
    Length holds = skein.holds();
    Optional<Length> longer = skein.label().filter(label -> skein.opened() && label.compareTo(holds) > 0);
    return new Worth(holds, longer.map(label -> new Worth(label, cost).of(holds)).orElse(cost));
  }
}
