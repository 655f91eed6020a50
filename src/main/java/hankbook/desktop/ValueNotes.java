package hankbook.desktop;

import hankbook.cost.Worth;
import hankbook.desktop.say.Say;
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
      notes.add(named(Labels.quiet(Say.text("On order, not in this: {0} for {1}.", Wording.metres(ordered.length()), Wording.money(ordered.cost()))), "value-ordered"));
    }
    SortedMap<String, Length> without = home.withoutCost();
    if (!without.isEmpty()) {
      notes.add(named(Labels.quiet(without(without)), "value-without"));
    }
    stocks.stream().skip(1).filter(other -> !other.value().inTheHouse().isEmpty()).forEach(other -> notes.add(Labels.quiet(other(other))));
    notes.add(named(Labels.quiet(Say.known(ValuedStock.CAUTION)), "value-caution"));
    return notes;
  }

  private static String total(ValuedStock stock) {
    ValueLine total = ValueLine.total(stock);
    String worth = Wording.money(stock.total().worth().cost());
    String amount = total.mass().isEmpty() ? total.metres() : total.metres() + ", " + total.mass();
    String said = stock.on().map(day -> Say.text("At the end of {0} in all {1} for {2}", day, worth, amount)).orElseGet(() -> Say.text("In all {0} for {1}", worth, amount));
    return said + (total.perMetre().isEmpty() ? "" : "; " + Say.text("{0} a metre", total.perMetre())) + ".";
  }

  private static String without(SortedMap<String, Length> skeins) {
    Length all = skeins.values().stream().reduce(Length.ZERO, Length::plus);
    List<String> first = skeins.entrySet().stream().limit(NAMED).map(skein -> skein.getKey() + " " + Wording.metres(skein.getValue())).toList();
    String names = String.join(", ", first);
    String named = skeins.size() > NAMED ? Say.text("{0} and {1} more", names, skeins.size() - NAMED) : names;
    return Say.count(skeins.size(), "Without a known cost, not in this: {0} skein, {1} ({2}). A purchase that names them brings them in.",
        "Without a known cost, not in this: {0} skeins, {1} ({2}). A purchase that names them brings them in.", Wording.metres(all), named);
  }

  private static String other(ValuedStock other) {
    return Say.text("Paid in {0}, not in this: {1} worth {2}. Two currencies are never added; enter a purchase with its rate to count it.",
        other.value().currency(), Wording.metres(other.value().total().length()), Wording.money(other.value().total().cost()));
  }

  private static Label named(Label label, String id) {
    label.setId(id);
    return label;
  }
}
