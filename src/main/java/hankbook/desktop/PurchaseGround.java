package hankbook.desktop;

import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/**
 * What the ledger has that a purchase is entered by.
 *
 * @param purchases every purchase, newest first
 * @param skeins every skein there ever was, those that came last first
 * @param home the currency in which the ledger reckons, or would
 * @param decided whether it does already
 */
record PurchaseGround(List<Purchased> purchases, List<SkeinToPay> skeins, CurrencyUnit home, boolean decided) {
  /** Before the ledger was asked. */
  static final PurchaseGround UNKNOWN = new PurchaseGround(List.of(), List.of(), CurrencyUnit.EUR, false);

  PurchaseGround {
    purchases = List.copyOf(purchases);
    skeins = List.copyOf(skeins);
  }

  static PurchaseGround of(Studio studio) {
    Purchases purchases = new Purchases(studio);
    List<Purchased> all = purchases.all();
    Map<String, Integer> paidBy = new HashMap<>();
    all.stream().filter(purchased -> purchased.kept().stands()).forEach(
        purchased -> purchased.kept().landed().purchase().skeins().forEach(code -> paidBy.put(code, purchased.kept().number())));
    Shelf shelf = new Shelf(studio);
    Set<String> wound = shelf.woundOff();
    List<SkeinToPay> skeins = shelf.everySkein().stream()
        .map(held -> toPay(held, paidBy, wound))
        .sorted(SkeinToPay.NEWEST_FIRST)
        .toList();
    return new PurchaseGround(all.stream().sorted(PurchaseRow.NEWEST_FIRST).toList(), skeins, purchases.homeCurrency(), purchases.decidedCurrency().isPresent());
  }

  private static SkeinToPay toPay(ShelfSkein held, Map<String, Integer> paidBy, Set<String> wound) {
    String code = held.skein().code();
    return SkeinToPay.of(held, paidBy.containsKey(code) ? OptionalInt.of(paidBy.get(code)) : OptionalInt.empty(), wound.contains(code));
  }
}
