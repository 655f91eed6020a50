package hankbook.desktop;

import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.UnitPrice;
import hankbook.desktop.say.Say;
import hankbook.studio.Purchased;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Where every coin of a purchase went: each line with its shares of what was paid for all, and below it what each of its skeins cost. */
final class LandingTable extends GridPane {
  private static final String UNKNOWN = "–";
  private static final int COLUMNS = 4;
  private static final double LEAST_NAME = 90;

  LandingTable() {
    getStyleClass().add("landing");
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    names.setMinWidth(LEAST_NAME);
    getColumnConstraints().add(names);
    for (int i = 1; i < COLUMNS; i++) {
      ColumnConstraints amounts = new ColumnConstraints();
      amounts.setHalignment(HPos.RIGHT);
      amounts.setMinWidth(USE_PREF_SIZE);
      getColumnConstraints().add(amounts);
    }
  }

  /** Shows a purchase. */
  void show(Purchased purchased) {
    getChildren().clear();
    CurrencyUnit home = purchased.kept().landed().home();
    addRow(0, Labels.quiet(""), head(Say.text("Landed, {0}", home)), head(Say.text("per m")), head(Say.text("per kg")));
    purchased.kept().landed().lines().forEach(line -> add(purchased, line, home));
  }

  private void add(Purchased purchased, LandedLine line, CurrencyUnit home) {
    Label words = named(line.line().words(), "landing-line");
    words.setWrapText(true);
    int row = getRowCount();
    addRow(row, words, strong(Wording.amount(line.landed())), number(purchased.perMetre(line)), number(purchased.perKilogram(line)));
    getChildren().stream().filter(node -> Objects.equals(getRowIndex(node), row)).forEach(node -> setValignment(node, VPos.TOP));
    Label shares = Labels.quiet(shares(line, home));
    shares.getStyleClass().add("landing-skein");
    add(shares, 0, getRowCount(), COLUMNS, 1);
    line.skeins().forEach(skein -> add(purchased, skein));
  }

  private void add(Purchased purchased, LandedSkein skein) {
    addRow(
        getRowCount(), named(skein.skein(), "landing-skein"), named(Wording.amount(skein.cost()), "landing-number"), number(purchased.perMetre(skein)),
        number(purchased.perKilogram(skein)));
  }

  /** The price of a line and its shares of the charges that there are. */
  static String shares(LandedLine line, CurrencyUnit home) {
    List<String> shares = new ArrayList<>(List.of(Say.text("price {0}", money(line.line().price(), home))));
    share(money -> Say.text("carriage {0}", money), line.carriage(), home, shares);
    share(money -> Say.text("duty {0}", money), line.duty(), home, shares);
    share(money -> Say.text("discount {0}", money), line.discount().negated(), home, shares);
    return String.join(", ", shares);
  }

  private static void share(UnaryOperator<String> words, Money amount, CurrencyUnit home, List<String> shares) {
    if (!amount.isZero()) {
      shares.add(words.apply(money(amount, home)));
    }
  }

  /** With its currency where that is not the home currency. */
  private static String money(Money amount, CurrencyUnit home) {
    return amount.getCurrencyUnit().equals(home) ? Wording.amount(amount) : Wording.money(amount);
  }

  private static Label head(String text) {
    Label head = Labels.quiet(text);
    head.setMinWidth(USE_PREF_SIZE);
    return head;
  }

  private static Label named(String text, String style) {
    Label label = new Label(text);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }

  private static Label number(Optional<UnitPrice> price) {
    Label label = named(price.map(UnitPrice::text).orElse(UNKNOWN), "landing-number");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static Label strong(String text) {
    Label label = named(text, "landing-line");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }
}
