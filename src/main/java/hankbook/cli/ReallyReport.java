package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.DurationText;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Allowances;
import hankbook.plan.WorkKind;
import hankbook.reckon.Made;
import hankbook.reckon.Realised;
import hankbook.reckon.Unlikely;
import hankbook.reckon.Way;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The ways of cloth and loom as they really were, as lines to read. */
final class ReallyReport {
  private ReallyReport() {}

  static List<String> lines(Made made, Realised really) {
    Allowances allowances = made.plan().allowances();
    TextTable table = new TextTable("what was really so", ">planned", ">really", "worked out from");
    really.ways().forEach((way, found) -> table.row("  " + way.words(), Way.percent(way.planned(allowances)), Way.percent(found.value()), found.from().english()));
    really.sampling().ifPresent(found -> table.row("  sampling", length(allowances.sampling()), length(found.value()), found.from().english()));
    really.loomWaste().ifPresent(found -> table.row("  loom waste", length(allowances.loomWaste()), length(found.value()), found.from().english()));
    really.times().forEach((kind, found) -> table.row("  " + kind.key() + ", " + of(kind), "", DurationText.rounded(found.value()), found.from().english()));
    boolean nothing = table.lines().size() == 1;
    List<String> lines = new ArrayList<>(nothing ? List.of("What was really so cannot be told from what was measured.") : table.lines());
    really.unlikely().stream().map(Unlikely::words).forEach(lines::add);
    List<Way> unknown = Arrays.stream(Way.values()).filter(way -> really.part(way).isEmpty() && really.unlikely().stream().noneMatch(never -> never.what().equals(way.words()))).toList();
    unknown.forEach(way -> lines.add("Not known: " + way.words() + ", which wants " + way.wants() + "."));
    return lines;
  }

  private static String of(WorkKind kind) {
    return switch (kind.per()) {
      case END -> "an end";
      case PICK -> "a pick";
      case PIECE -> "a piece";
    };
  }

  private static String length(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 2);
  }
}
