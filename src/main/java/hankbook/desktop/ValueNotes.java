package hankbook.desktop;

import hankbook.cost.Worth;
import hankbook.measure.Length;
import hankbook.studio.ValuedStock;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** What stands below the value of the stock: its total, and all that is not in it. */
final class ValueNotes {
  private static final int NAMED = 8;

  private ValueNotes() {}

  static List<Node> of(List<ValuedStock> stocks) {
    ValuedStock home = stocks.getFirst();
    List<Node> notes = new ArrayList<>(List.of(named(Labels.heading(total(home)), "value-total")));
    Worth ordered = home.value().ordered();
    if (!ordered.length().isZero()) {
      notes.add(named(Labels.quiet("On order, not in this: " + Wording.metres(ordered.length()) + " for " + Wording.money(ordered.cost()) + "."), "value-ordered"));
    }
    SortedMap<String, Length> without = home.withoutCost();
    if (!without.isEmpty()) {
      notes.add(named(Labels.quiet(without(without)), "value-without"));
    }
    stocks.stream().skip(1).filter(other -> !other.value().inTheHouse().isEmpty()).forEach(other -> notes.add(Labels.quiet(other(other))));
    notes.add(named(Labels.quiet(ValuedStock.CAUTION), "value-caution"));
    return notes;
  }

  private static String total(ValuedStock stock) {
    ValueLine total = ValueLine.total(stock);
    String when = stock.on().map(day -> "At the end of " + day + " in all ").orElse("In all ");
    String mass = total.mass().isEmpty() ? "" : ", " + total.mass();
    return when + Wording.money(stock.total().worth().cost()) + " for " + total.metres() + mass + (total.perMetre().isEmpty() ? "" : "; " + total.perMetre() + " a metre") + ".";
  }

  private static String without(SortedMap<String, Length> skeins) {
    Length all = skeins.values().stream().reduce(Length.ZERO, Length::plus);
    List<String> first = skeins.entrySet().stream().limit(NAMED).map(skein -> skein.getKey() + " " + Wording.metres(skein.getValue())).toList();
    String more = skeins.size() > NAMED ? " and " + (skeins.size() - NAMED) + " more" : "";
    return "Without a known cost, not in this: " + Wording.count(skeins.size(), "skein", "skeins") + ", " + Wording.metres(all) + " (" + String.join(", ", first) + more
        + "). A purchase that names them brings them in.";
  }

  private static String other(ValuedStock other) {
    return "Paid in " + other.value().currency() + ", not in this: " + Wording.metres(other.value().total().length()) + " worth " + Wording.money(other.value().total().cost())
        + ". Two currencies are never added; enter a purchase with its rate to count it.";
  }

  private static Label named(Label label, String id) {
    label.setId(id);
    return label;
  }
}
