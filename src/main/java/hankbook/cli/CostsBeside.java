package hankbook.cli;

import hankbook.cost.Comparison;
import hankbook.cost.Price;
import hankbook.exchange.TextTable;
import hankbook.studio.CostedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Two costs side by side, as a page to read. */
final class CostsBeside {
  private static final int TO_YARNS = 3;

  private CostsBeside() {}

  /** Line by line, and what else differs. */
  static String of(CostedPlan now, CostedPlan then) {
    TextTable table = new TextTable("What if: " + then.cost().plan().name(), ">now", ">then", ">difference");
    row(table, now.beside(then), 0);
    table.row("To be spent now", plain(now.cost().spendNow()), plain(then.cost().spendNow()), signed(then.cost().spendNow().minus(now.cost().spendNow())));
    Optional<Money> price = now.price().map(Price::all);
    Optional<Money> other = then.price().map(Price::all);
    if (price.isPresent() || other.isPresent()) {
      table.row(
          "Price", price.map(CostsBeside::plain).orElse(""), other.map(CostsBeside::plain).orElse(""),
          price.isPresent() && other.isPresent() ? signed(other.get().minus(price.get())) : "");
    }
    List<String> lines = new ArrayList<>(List.of("", ""));
    lines.addAll(table.lines());
    List<String> uncounted = then.cost().uncounted().stream().filter(left -> !now.cost().uncounted().contains(left)).map(left -> "  " + left + ".").toList();
    if (!uncounted.isEmpty()) {
      lines.add("Not counted then:");
      lines.addAll(uncounted);
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static void row(TextTable table, Comparison comparison, int depth) {
    table.row(
        "  ".repeat(depth) + comparison.name(), comparison.now().map(CostsBeside::plain).orElse(""), comparison.then().map(CostsBeside::plain).orElse(""),
        comparison.differs() ? signed(comparison.difference()) : "");
    if (depth < TO_YARNS) {
      comparison.parts().forEach(part -> row(table, part, depth + 1));
    }
  }

  private static String signed(Money money) {
    return (money.isPositive() ? "+" : "") + plain(money);
  }

  private static String plain(Money money) {
    return money.getAmount().toPlainString();
  }
}
