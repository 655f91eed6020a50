package hankbook.cli;

import hankbook.cost.Worth;
import hankbook.exchange.TextTable;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.MoneyText;
import hankbook.studio.ValueBy;
import hankbook.studio.ValueRow;
import hankbook.studio.ValuedStock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the stock is worth, as a page to read. */
final class ValueReport {
  private static final int NAMED = 12;

  private ValueReport() {}

  static String of(List<ValuedStock> stocks, ValueBy by) {
    ValuedStock home = stocks.getFirst();
    List<String> lines = new ArrayList<>(List.of(heading(home), ""));
    lines.addAll(table(home, by));
    lines.add("");
    if (!home.value().onOrder().isEmpty()) {
      Worth ordered = home.value().ordered();
      lines.add("On order, not in this: " + metres(ordered.length()) + " for " + MoneyText.print(ordered.cost()) + ".");
    }
    withoutCost(home, lines);
    stocks.stream().skip(1).filter(other -> !other.value().inTheHouse().isEmpty()).forEach(other -> lines.add(
        "Paid in " + other.value().currency() + " and not in this: " + metres(other.value().total().length()) + " worth " + MoneyText.print(other.value().total().cost())
            + "; two currencies are never added. Enter what was paid as a purchase, with its rate, to count it."));
    lines.add(ValuedStock.CAUTION);
    return String.join(System.lineSeparator(), lines);
  }

  static String when(ValuedStock stock) {
    return stock.on().map(day -> " at the end of " + day).orElse("");
  }

  private static String heading(ValuedStock stock) {
    return "The yarn in the house" + when(stock) + ", by " + stock.value().method().words() + ".";
  }

  private static List<String> table(ValuedStock stock, ValueBy by) {
    if (stock.value().inTheHouse().isEmpty()) {
      return List.of("No yarn of known cost is in the house" + when(stock) + ".");
    }
    TextTable table = new TextTable(by.name().toLowerCase(Locale.ROOT), ">metres", ">mass", ">value in " + stock.value().currency(), ">by the metre");
    stock.rows(by).forEach(row -> table.row(row.name().isEmpty() ? "not said" : row.name(), length(row.worth().length()), mass(row), amount(row), perMetre(row)));
    ValueRow total = stock.total();
    table.row("in all", length(total.worth().length()), mass(total), amount(total), perMetre(total));
    return table.lines();
  }

  private static void withoutCost(ValuedStock stock, List<String> lines) {
    SortedMap<String, Length> without = stock.withoutCost();
    if (!without.isEmpty()) {
      Length all = without.values().stream().reduce(Length.ZERO, Length::plus);
      List<String> named = without.entrySet().stream().limit(NAMED).map(ValueReport::named).toList();
      String more = without.size() > NAMED ? " and " + (without.size() - NAMED) + " more" : "";
      lines.add("Without a known cost, not in this: " + without.size() + (without.size() == 1 ? " skein, " : " skeins, ") + metres(all) + ": " + String.join(", ", named) + more + ".");
    }
  }

  private static String named(Map.Entry<String, Length> skein) {
    return skein.getKey() + " " + metres(skein.getValue());
  }

  /** A part whose grist is not known makes the mass a least one. */
  private static String mass(ValueRow row) {
    if (row.mass().milligrams() == 0) {
      return "";
    }
    return (row.withoutMass().isZero() ? "" : "over ") + Exact.plain(BigFraction.of(row.mass().milligrams(), 1000), 0) + " g";
  }

  private static String amount(ValueRow row) {
    return row.worth().cost().getAmount().toPlainString();
  }

  private static String perMetre(ValueRow row) {
    return row.perMetre().map(BigDecimal::toPlainString).orElse("");
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  private static String length(Length length) {
    return Exact.decimal(length.in(LengthUnit.METRE), 1, RoundingMode.HALF_UP).toPlainString();
  }
}
