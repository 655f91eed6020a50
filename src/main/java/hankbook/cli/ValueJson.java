package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.cost.PaidFor;
import hankbook.exchange.JsonText;
import hankbook.ledger.Place;
import hankbook.studio.ValueBy;
import hankbook.studio.ValueRow;
import hankbook.studio.ValuedStock;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.Money;

/** What the stock is worth, as one JSON object; amounts in their currency, metres to four places, the value of a metre to four. */
final class ValueJson {
  private ValueJson() {}

  static String of(List<ValuedStock> stocks, ValueBy by) {
    ValuedStock home = stocks.getFirst();
    ObjectNode root = JsonText.object();
    root.put("on", home.on().map(LocalDate::toString).orElse(null)).put("method", home.value().method().key()).put("by", by.name().toLowerCase(Locale.ROOT));
    stock(root, home, by);
    ArrayNode without = root.putArray("withoutCost");
    home.withoutCost().forEach((code, length) -> without.addObject().put("skein", code).put("lengthM", length.metres()));
    ArrayNode others = root.putArray("otherCurrencies");
    stocks.stream().skip(1).forEach(other -> stock(others.addObject(), other, by));
    return JsonText.of(root.put("caution", ValuedStock.CAUTION));
  }

  private static void stock(ObjectNode node, ValuedStock stock, ValueBy by) {
    node.put("currency", stock.value().currency().getCode());
    ArrayNode rows = node.putArray("rows");
    stock.rows(by).forEach(row -> row(rows.addObject().put(by.name().toLowerCase(Locale.ROOT), row.name()), row));
    row(node.putObject("total"), stock.total());
    node.putObject("onOrder").put("lengthM", stock.value().ordered().length().metres()).put("value", amount(stock.value().ordered().cost()));
    paid(node.putObject("paid"), stock.paid());
  }

  private static void row(ObjectNode node, ValueRow row) {
    node.put("lengthM", row.worth().length().metres());
    node.put("massG", row.withoutMass().isZero() ? BigDecimal.valueOf(row.mass().milligrams(), 3) : null);
    node.put("value", amount(row.worth().cost())).put("perMetre", row.perMetre().orElse(null));
  }

  private static void paid(ObjectNode node, PaidFor paid) {
    node.put("paid", amount(paid.paid())).put("shelf", amount(paid.shelf())).put("onOrder", amount(paid.onOrder()));
    ArrayNode plans = node.putArray("plans");
    paid.plans().forEach((plan, places) -> {
      ObjectNode one = plans.addObject().put("plan", plan);
      places.forEach((kind, cost) -> one.put(kind.name().toLowerCase(Locale.ROOT), amount(cost)));
    });
    Money none = Money.zero(paid.paid().getCurrencyUnit());
    node.putObject("lost")
        .put("away", amount(paid.lost().getOrDefault(Place.Kind.AWAY, none)))
        .put("recount", amount(paid.lost().getOrDefault(Place.Kind.RECOUNT, none)))
        .put("rewound", amount(paid.lost().getOrDefault(Place.Kind.REWOUND, none)));
    node.put("toCome", amount(paid.toCome()));
  }

  private static BigDecimal amount(Money money) {
    return money.getAmount();
  }
}
