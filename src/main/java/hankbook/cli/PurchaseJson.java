package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.cost.Charge;
import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.Purchase;
import hankbook.cost.UnitPrice;
import hankbook.exchange.JsonText;
import hankbook.measure.MoneyText;
import hankbook.studio.Purchased;
import java.util.List;
import java.util.Optional;

/** Purchases, as one JSON object each; amounts as a stock file has them, prices of a metre to six places and of a kilogram to four. */
final class PurchaseJson {
  private static final int PLACES_OF_METRE = 6;
  private static final int PLACES_OF_KILOGRAM = 4;

  private PurchaseJson() {}

  static String list(List<Purchased> purchases) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("purchases");
    purchases.forEach(purchased -> head(array.addObject(), purchased.kept()));
    return JsonText.of(root);
  }

  static String one(Purchased purchased) {
    ObjectNode root = JsonText.object();
    KeptPurchase kept = purchased.kept();
    Purchase purchase = kept.landed().purchase();
    head(root, kept);
    charge(root, "carriage", purchase.carriage());
    charge(root, "duty", purchase.duty());
    charge(root, "discount", purchase.discount());
    purchase.rate().ifPresentOrElse(rate -> root.put("rate", rate.text()).put("rateDate", rate.day().toString()), () -> root.putNull("rate").putNull("rateDate"));
    ArrayNode lines = root.putArray("lines");
    kept.landed().lines().forEach(line -> line(lines.addObject(), purchased, line));
    return JsonText.of(root);
  }

  private static void head(ObjectNode node, KeptPurchase kept) {
    Purchase purchase = kept.landed().purchase();
    node.put("purchase", kept.number()).put("version", kept.version()).put("stands", kept.stands()).put("reason", kept.reason()).put("author", kept.author());
    node.put("date", purchase.date().toString()).put("from", purchase.from()).put("currency", purchase.currency().getCode());
    node.put("goods", MoneyText.print(purchase.goods())).put("landed", MoneyText.print(kept.landed().total()));
  }

  private static void charge(ObjectNode node, String key, Charge charge) {
    node.put(key, MoneyText.print(charge.amount())).put(key + "By", charge.basis().words());
  }

  private static void line(ObjectNode node, Purchased purchased, LandedLine line) {
    node.put("words", line.line().words()).put("price", MoneyText.print(line.line().price()));
    node.put("carriage", MoneyText.print(line.carriage())).put("duty", MoneyText.print(line.duty())).put("discount", MoneyText.print(line.discount()));
    node.put("landed", MoneyText.print(line.landed()));
    prices(node, purchased.perMetre(line), purchased.perKilogram(line));
    ArrayNode skeins = node.putArray("skeins");
    for (LandedSkein skein : line.skeins()) {
      ObjectNode one = skeins.addObject().put("skein", skein.skein()).put("cost", MoneyText.print(skein.cost()));
      skein.before().map(MoneyText::print).ifPresentOrElse(before -> one.put("before", before), () -> one.putNull("before"));
      prices(one, purchased.perMetre(skein), purchased.perKilogram(skein));
    }
  }

  private static void prices(ObjectNode node, Optional<UnitPrice> metre, Optional<UnitPrice> kilogram) {
    metre.map(price -> price.decimal(PLACES_OF_METRE)).ifPresentOrElse(price -> node.put("perMetre", price), () -> node.putNull("perMetre"));
    kilogram.map(price -> price.decimal(PLACES_OF_KILOGRAM)).ifPresentOrElse(price -> node.put("perKilogram", price), () -> node.putNull("perKilogram"));
  }
}
