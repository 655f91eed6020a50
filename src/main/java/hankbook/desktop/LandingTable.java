package hankbook.desktop;

import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.UnitPrice;
import hankbook.studio.Purchased;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Where every coin of a purchase went: each line with its shares, and below it what each of its skeins cost. Charges that there are none of have no column. */
final class LandingTable extends GridPane {
  private static final String NOTHING = "–";

  /** A column of charges. */
  private record Share(String name, Function<LandedLine, Money> of) {}

  LandingTable() {
    getStyleClass().add("landing");
  }

  /** Shows a purchase. */
  void show(Purchased purchased) {
    getChildren().clear();
    CurrencyUnit home = purchased.kept().landed().home();
    List<LandedLine> lines = purchased.kept().landed().lines();
    List<Share> shares = shares(lines);
    constrain(shares.size() + 5);
    List<Node> head = new ArrayList<>(List.of(Labels.quiet(""), Labels.quiet("Price")));
    shares.forEach(share -> head.add(Labels.quiet(share.name())));
    head.addAll(List.of(Labels.quiet("Landed " + home), Labels.quiet("per m"), Labels.quiet("per kg")));
    addRow(0, head.toArray(Node[]::new));
    for (LandedLine line : lines) {
      List<Node> cells = new ArrayList<>(List.of(name(line.line().words(), "landing-line"), number(money(line.line().price(), home))));
      shares.forEach(share -> cells.add(number(money(share.of().apply(line), home))));
      cells.addAll(List.of(strong(Wording.amount(line.landed())), number(text(purchased.perMetre(line))), number(text(purchased.perKilogram(line)))));
      addRow(getRowCount(), cells.toArray(Node[]::new));
      line.skeins().forEach(skein -> addSkein(purchased, skein, shares.size()));
    }
  }

  private void addSkein(Purchased purchased, LandedSkein skein, int shares) {
    int row = getRowCount();
    add(name(skein.skein(), "landing-skein"), 0, row);
    add(number(Wording.amount(skein.cost())), 2 + shares, row);
    add(number(text(purchased.perMetre(skein))), 3 + shares, row);
    add(number(text(purchased.perKilogram(skein))), 4 + shares, row);
  }

  private static List<Share> shares(List<LandedLine> lines) {
    List<Share> all = List.of(
        new Share("Carriage", LandedLine::carriage), new Share("Duty", LandedLine::duty), new Share("Discount", line -> line.discount().negated()));
    return all.stream().filter(share -> lines.stream().anyMatch(line -> !share.of().apply(line).isZero())).toList();
  }

  private void constrain(int columns) {
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    names.setMinWidth(60);
    List<ColumnConstraints> all = new ArrayList<>(List.of(names));
    for (int i = 1; i < columns; i++) {
      ColumnConstraints amounts = new ColumnConstraints();
      amounts.setHalignment(HPos.RIGHT);
      amounts.setMinWidth(USE_PREF_SIZE);
      all.add(amounts);
    }
    getColumnConstraints().setAll(all);
  }

  /** With its currency where that is not the home currency. */
  private static String money(Money amount, CurrencyUnit home) {
    return amount.isZero() ? NOTHING : amount.getCurrencyUnit().equals(home) ? Wording.amount(amount) : Wording.money(amount);
  }

  private static String text(Optional<UnitPrice> price) {
    return price.map(UnitPrice::text).orElse(NOTHING);
  }

  private static Label name(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    return label;
  }

  private static Label number(String text) {
    Label label = name(text, "landing-number");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static Label strong(String text) {
    Label label = number(text);
    label.getStyleClass().add("landing-line");
    return label;
  }
}
