package hankbook.cli;

import hankbook.cost.Charge;
import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.Purchase;
import hankbook.cost.UnitPrice;
import hankbook.exchange.TextTable;
import hankbook.measure.MoneyText;
import hankbook.studio.Purchased;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Purchases, as pages to read. */
final class PurchaseReport {
  private static final String CAUTION =
      "Whether duty or tax counts as cost, and whether any of it can be claimed back, is for your local rules and a licensed adviser to say.";

  private PurchaseReport() {}

  static String list(List<Purchased> purchases) {
    if (purchases.isEmpty()) {
      return "No purchase yet; purchase add enters one.";
    }
    TextTable table = new TextTable(">no.", "date", "from", ">skeins", ">goods", ">in all", "");
    for (Purchased purchased : purchases) {
      KeptPurchase kept = purchased.kept();
      Purchase purchase = kept.landed().purchase();
      table.row(
          Integer.toString(kept.number()), purchase.date().toString(), purchase.from(), Integer.toString(purchase.skeins().size()), MoneyText.print(purchase.goods()),
          MoneyText.print(kept.landed().total()), kept.stands() ? "" : "taken back: " + kept.reason());
    }
    return page(table.lines());
  }

  static String one(Purchased purchased) {
    KeptPurchase kept = purchased.kept();
    Purchase purchase = kept.landed().purchase();
    List<String> lines = new ArrayList<>();
    lines.add("Purchase " + kept.number() + ", " + purchase.date() + (purchase.from().isEmpty() ? "" : ", from " + purchase.from()) + ", entered by " + kept.author());
    if (!kept.stands()) {
      lines.add("Taken back: " + kept.reason() + ". Its skeins cost again what was said before it.");
    }
    lines.add("");
    lines.addAll(table(purchased).lines());
    lines.add("");
    lines.addAll(sum(kept));
    return page(lines);
  }

  private static TextTable table(Purchased purchased) {
    TextTable table = new TextTable("", ">price", ">carriage", ">duty", ">discount", ">cost", ">a metre", ">a kg");
    CurrencyUnit home = purchased.kept().landed().home();
    for (LandedLine line : purchased.kept().landed().lines()) {
      table.row(
          line.line().words(), money(line.line().price(), home), money(line.carriage(), home), money(line.duty(), home),
          line.discount().isZero() ? "" : "-" + money(line.discount(), home), money(line.landed(), home), text(purchased.perMetre(line)), text(purchased.perKilogram(line)));
      for (LandedSkein skein : line.skeins()) {
        table.row("  " + skein.skein(), "", "", "", "", money(skein.cost(), home), text(purchased.perMetre(skein)), text(purchased.perKilogram(skein)));
      }
    }
    return table;
  }

  private static List<String> sum(KeptPurchase kept) {
    Purchase purchase = kept.landed().purchase();
    List<String> lines = new ArrayList<>();
    lines.add("In all " + MoneyText.print(kept.landed().total()) + ": the skeins' costs sum to it.");
    purchase.rate().ifPresent(rate -> lines.add(
        "What was paid in " + purchase.currency() + " was turned once, at " + rate.text() + " " + kept.landed().home() + " for 1 " + purchase.currency() + " of " + rate.day() + "."));
    List<String> shared = new ArrayList<>();
    shared("carriage", purchase.carriage(), shared);
    shared("duty", purchase.duty(), shared);
    shared("discount", purchase.discount(), shared);
    if (!shared.isEmpty() && purchase.lines().size() > 1) {
      lines.add("Shared over the lines: " + String.join(", ", shared) + ".");
    }
    if (kept.version() > 1 && kept.stands()) {
      lines.add("Corrected" + (kept.reason().isEmpty() ? "" : ": " + kept.reason()) + "; what was said before is kept (this is version " + kept.version() + ").");
    }
    if (!purchase.duty().amount().isZero()) {
      lines.add(CAUTION);
    }
    return lines;
  }

  private static void shared(String what, Charge charge, List<String> shared) {
    if (!charge.amount().isZero()) {
      shared.add(what + " by " + charge.basis().words());
    }
  }

  /** With its currency where that is not the one of the page; nothing for nothing. */
  private static String money(Money amount, CurrencyUnit home) {
    return amount.isZero() ? "" : amount.getCurrencyUnit().equals(home) ? amount.getAmount().toPlainString() : MoneyText.print(amount);
  }

  private static String text(Optional<UnitPrice> price) {
    return price.map(UnitPrice::text).orElse("");
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }
}
