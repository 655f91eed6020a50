package hankbook.cli;

import hankbook.allot.Purchase;
import hankbook.cost.CostLine;
import hankbook.cost.Labour;
import hankbook.cost.PieceCost;
import hankbook.cost.PlanCost;
import hankbook.cost.PlanSpent;
import hankbook.cost.Price;
import hankbook.cost.Remnant;
import hankbook.exchange.TextTable;
import hankbook.ledger.Place;
import hankbook.measure.DurationText;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.MoneyText;
import hankbook.studio.CostedPlan;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** What a plan costs, as a page to read. */
final class CostReport {
  private static final int TO_YARNS = 3;

  private final CostedPlan costed;
  private final PlanCost cost;
  private final List<String> lines = new ArrayList<>();

  private CostReport(CostedPlan costed) {
    this.costed = costed;
    this.cost = costed.cost();
  }

  static String of(CostedPlan costed, boolean skeins) {
    CostReport report = new CostReport(costed);
    report.lines.add(report.cost.plan().name());
    report.lines.add("");
    report.cost(skeins ? Integer.MAX_VALUE : TO_YARNS);
    report.price();
    report.notCounted();
    report.hours();
    report.buying();
    report.remnants();
    report.spent();
    return String.join(System.lineSeparator(), report.lines);
  }

  private void cost(int depth) {
    TextTable table = new TextTable("Cost", ">" + cost.currency(), ">yarn", "how");
    row(table, cost.total(), 0, depth);
    lines.addAll(table.lines());
    if (!cost.uncounted().isEmpty()) {
      lines.add("This is without what is not counted, below.");
    }
    cost.pieces().forEach(piece -> lines.add(each(piece)));
  }

  private static void row(TextTable table, CostLine line, int depth, int deepest) {
    table.row("  ".repeat(depth) + line.name(), line.amount().getAmount().toPlainString(), line.length().map(CostReport::metres).orElse(""), line.basis());
    if (depth < deepest) {
      line.parts().forEach(part -> row(table, part, depth + 1, deepest));
    }
  }

  private static String each(PieceCost piece) {
    return "Each " + piece.name() + " of " + piece.count() + ": " + piece.words() + ".";
  }

  private void price() {
    for (Price price : costed.price().stream().toList()) {
      lines.add("");
      lines.add("Price with " + price.pricing().words() + ", to the nearest smallest coin: " + MoneyText.print(price.all()));
      price.pieces().forEach(piece -> lines.add(each(piece)));
      lines.add("Whether tax comes on top of it or is in it follows local rules; ask someone who is licensed to say.");
    }
  }

  private void notCounted() {
    if (!cost.uncounted().isEmpty()) {
      lines.add("");
      lines.add("Not counted:");
      cost.uncounted().forEach(left -> lines.add("  " + left + "."));
    }
    if (!costed.atNamedPrice().isEmpty()) {
      lines.add("At the price you named, since it is not known what was paid: " + String.join(", ", costed.atNamedPrice()) + ".");
    }
  }

  /** Work that has a rate says its hours beside its cost. */
  private void hours() {
    List<Labour> work = cost.work().stream().filter(labour -> !labour.time().isZero() && labour.hourly().isEmpty()).toList();
    if (!work.isEmpty()) {
      lines.add("");
      TextTable table = new TextTable("Work without a rate", ">count", ">each", ">in all", "known by");
      work.forEach(labour -> table.row(
          labour.kind().key(), Long.toString(labour.count()), DurationText.rounded(labour.unit().each()), DurationText.rounded(labour.time()), labour.unit().from().english()));
      lines.addAll(table.lines());
      lines.add("A rate is set by, for one: settings hourlyRate '18 EUR'; or named here: --rate '18 EUR'.");
    }
  }

  private void buying() {
    if (!cost.purchases().isEmpty()) {
      lines.add("");
      lines.add("To be spent now, on whole put-ups: " + MoneyText.print(cost.spendNow()));
      cost.purchases().forEach(purchase -> lines.add("  " + purchase(purchase)));
    }
  }

  private static String purchase(Purchase purchase) {
    if (purchase.putUps().isEmpty()) {
      return purchase.yarn() + ": nothing shows how it is put up";
    }
    String of = purchase.holds().map(holds -> " of " + metres(holds)).orElse("");
    return purchase.putUps().getAsInt() + of + " of " + purchase.yarn() + purchase.each().map(each -> " at " + MoneyText.print(each)).orElse(", at a price that is not known");
  }

  private void remnants() {
    if (!cost.remnants().isEmpty()) {
      lines.add("");
      lines.add("Left over, and in none of these costs:");
      cost.remnants().forEach(remnant -> lines.add("  " + remnant(remnant)));
    }
  }

  private static String remnant(Remnant remnant) {
    String where = remnant.skein().isEmpty() ? "what is bought" : remnant.skein();
    String worth = remnant.worth().map(cost -> ", worth " + MoneyText.print(cost)).orElse(", of unknown worth");
    return metres(remnant.left()) + " of " + remnant.yarn() + " on " + where + worth + (remnant.useful() ? "" : ": too short to weave from");
  }

  private void spent() {
    for (PlanSpent spent : costed.spent().stream().toList()) {
      Money planned = cost.total().part("yarn").map(CostLine::amount).orElse(Money.zero(cost.currency()));
      lines.add("");
      lines.add("What its yarn has cost so far: " + MoneyText.print(spent.total()) + "; the yarn above: " + MoneyText.print(planned));
      spent.places().forEach((place, worth) -> lines.add("  " + words(place) + ": " + metres(worth.length()) + ", " + MoneyText.print(worth.cost())));
      if (spent.places().containsKey(Place.Kind.CLOTH)) {
        lines.add("  Some of it is cloth: the costs above are those of weaving all of it once more, from what is on the shelf now.");
      }
      if (!spent.unknown().isEmpty()) {
        lines.add("  Not counted, since what was paid is not known: " + String.join(", ", spent.unknown()));
      }
    }
  }

  private static String words(Place.Kind place) {
    return switch (place) {
      case LOOM -> "on the loom";
      case CLOTH -> "in the cloth";
      case THRUMS -> "thrums";
      case SAMPLE -> "samples";
      case MAKER, ORDERED, SHELF, RESERVED, AWAY, RECOUNT, REWOUND -> throw new IllegalArgumentException(place + " is nowhere that a plan spends yarn");
    };
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
