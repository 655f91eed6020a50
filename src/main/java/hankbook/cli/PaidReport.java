package hankbook.cli;

import hankbook.cost.PaidFor;
import hankbook.exchange.TextTable;
import hankbook.ledger.Place;
import hankbook.measure.MoneyText;
import hankbook.studio.ValuedStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.Money;

/** What became of what was paid for yarn, as a page to read: by identified cost, whatever method values the stock. */
final class PaidReport {
  private PaidReport() {}

  static String of(List<ValuedStock> stocks) {
    List<String> lines = new ArrayList<>();
    for (ValuedStock stock : stocks) {
      lines.add("What became of the " + MoneyText.print(stock.paid().paid()) + " that were paid for yarn" + ValueReport.when(stock) + ", each skein at its own cost:");
      lines.add("");
      lines.addAll(table(stock.paid()));
      lines.add("");
      if (stock.paid().toCome().isPositive()) {
        lines.add("Beside it " + MoneyText.print(stock.paid().toCome()) + " for skeins that have no length in the ledger" + (stock.on().isPresent() ? " by then." : " yet."));
      }
    }
    int without = stocks.getFirst().withoutCost().size();
    if (without > 0) {
      lines.add("Not in this: " + without + (without == 1 ? " skein" : " skeins") + " in the house without a known cost; value names them.");
    }
    if (stocks.size() > 1) {
      lines.add("Two currencies are never added. Enter what was paid in another as a purchase, with its rate, to count it with the rest.");
    }
    return String.join(System.lineSeparator(), lines).stripTrailing();
  }

  private static List<String> table(PaidFor paid) {
    TextTable table = new TextTable("where", "", ">" + paid.paid().getCurrencyUnit());
    row(table, "shelf", "", paid.shelf());
    row(table, "on order", "", paid.onOrder());
    paid.plans().forEach((plan, places) -> places.forEach((kind, cost) -> row(table, plan, words(kind), cost)));
    for (Map.Entry<Place.Kind, String> loss : List.of(
        Map.entry(Place.Kind.AWAY, "parted with"), Map.entry(Place.Kind.RECOUNT, "not found in recounts"), Map.entry(Place.Kind.REWOUND, "wound off, onto nothing"))) {
      row(table, loss.getValue(), "", paid.lost().getOrDefault(loss.getKey(), Money.zero(paid.paid().getCurrencyUnit())));
    }
    table.row("in all", "", paid.accounted().getAmount().toPlainString());
    return table.lines();
  }

  private static void row(TextTable table, String where, String what, Money cost) {
    if (!cost.isZero()) {
      table.row(where, what, cost.getAmount().toPlainString());
    }
  }

  private static String words(Place.Kind kind) {
    return kind == Place.Kind.LOOM ? "on the loom" : kind.name().toLowerCase(Locale.ROOT);
  }
}
