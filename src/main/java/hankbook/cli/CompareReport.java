package hankbook.cli;

import hankbook.cost.Alternatives;
import hankbook.cost.Aspect;
import hankbook.cost.Contender;
import hankbook.cost.Figure;
import hankbook.cost.Trait;
import hankbook.cost.Uncounted;
import hankbook.exchange.TextTable;
import hankbook.measure.DurationText;
import hankbook.measure.LengthUnit;
import hankbook.measure.MoneyText;
import java.util.ArrayList;
import java.util.List;

/** Plans side by side, as a page to read. */
final class CompareReport {
  private CompareReport() {}

  static String of(Alternatives alternatives) {
    List<String> headings = new ArrayList<>(List.of("side by side"));
    alternatives.contenders().forEach(plan -> headings.add(">" + plan.name()));
    headings.add("");
    TextTable table = new TextTable(headings.toArray(String[]::new));
    alternatives.aspects().forEach(aspect -> row(table, aspect));
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.add("Each is held against the shelf by itself: what is reserved for another of them counts as free.");
    alternatives.contenders().forEach(plan -> lines.addAll(notCounted(plan)));
    return String.join(System.lineSeparator(), lines);
  }

  private static void row(TextTable table, Aspect aspect) {
    List<String> cells = new ArrayList<>(List.of(name(aspect.trait()) + aspect.yarn().map(yarn -> " " + yarn).orElse("")));
    for (int i = 0; i < aspect.figures().size(); i++) {
      String best = aspect.best().contains(i) ? best(aspect.trait()) + ": " : "";
      cells.add(best + aspect.figures().get(i).map(figure -> words(aspect.trait(), figure)).orElse("none"));
    }
    cells.add(aspect.differs() ? "" : "the same");
    table.row(cells.toArray(String[]::new));
  }

  /** Yarn whose cost is not known makes a total look small; work that no rate is set for is the same for all. */
  private static List<String> notCounted(Contender plan) {
    return plan.cost().uncounted().stream().filter(left -> left.kind() == Uncounted.Kind.YARN).map(left -> plan.name() + ", not in its cost: " + left + ".").toList();
  }

  private static String best(Trait trait) {
    return trait == Trait.VERDICT ? "best" : trait.better() == Trait.Better.MOST ? "most" : "least";
  }

  private static String name(Trait trait) {
    return switch (trait) {
      case VERDICT -> "verdict";
      case RISK -> "risk of running short";
      case NEED -> "need of";
      case LEFT -> "left of";
      case PIECES -> "pieces";
      case ENDS -> "ends";
      case WIDTH_IN_REED -> "width in the reed";
      case WIDTH -> "width finished";
      case WARP_LENGTH -> "warp length";
      case COST -> "cost";
      case EACH -> "cost of each piece";
      case TIME -> "time";
      case PUT_UPS -> "to buy of";
      case SPEND_NOW -> "to be spent now";
    };
  }

  private static String words(Trait trait, Figure figure) {
    return switch (figure) {
      case Figure.Unknown() -> "not known";
      case Figure.Metres(var length) -> length.print(LengthUnit.METRE, trait == Trait.WARP_LENGTH ? 2 : 1);
      case Figure.Across(var length) -> length.print(LengthUnit.CENTIMETRE, 1);
      case Figure.Count(long count) -> Long.toString(count);
      case Figure.Amount(var money) -> MoneyText.print(money);
      case Figure.Time(var time) -> DurationText.rounded(time);
      case Figure.Stands(var verdict) -> verdict.name();
      case Figure.Chance(var risk) -> risk.words();
    };
  }
}
