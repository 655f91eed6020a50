package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.desktop.why.WhyBelow;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a plan costs, line by line: with the yarn it takes, or as it is and what if, with the difference. */
final class CostTable extends GridPane {
  private static final int AMOUNTS = 3;

  private final YarnPalette palette;
  private final boolean compared;
  private final Opened opened;

  /**
   * The table.
   *
   * @param compared whether another cost stands beside it
   * @param opened what explains itself, kept from one answer to the next
   */
  CostTable(List<CostRow> rows, CurrencyUnit currency, boolean compared, YarnPalette palette, Opened opened) {
    this.palette = palette;
    this.compared = compared;
    this.opened = opened;
    setId("cost-table");
    getStyleClass().add("cost-table");
    ColumnConstraints name = new ColumnConstraints();
    name.setHgrow(Priority.ALWAYS);
    name.setMinWidth(0);
    getColumnConstraints().add(name);
    for (int i = 0; i < (compared ? AMOUNTS : AMOUNTS - 1); i++) {
      ColumnConstraints amount = new ColumnConstraints();
      amount.setMinWidth(Region.USE_PREF_SIZE);
      amount.setHalignment(HPos.RIGHT);
      getColumnConstraints().add(amount);
    }
    if (compared) {
      addRow(0, Labels.quiet(currency.getCode()), head(Say.text("as it is")), head(Say.text("what if")), head(Say.text("difference")));
    } else {
      addRow(0, Labels.quiet(""), head(Say.text("yarn")), head(currency.getCode()));
    }
    rows.forEach(this::add);
  }

  private static Label head(String words) {
    Label head = Labels.quiet(words);
    head.setMinWidth(USE_PREF_SIZE);
    return head;
  }

  private void add(CostRow row) {
    if (row.isTotal()) {
      Region rule = new Region();
      rule.getStyleClass().add("cost-rule");
      add(rule, 0, getRowCount(), AMOUNTS + 1, 1);
    }
    int line = getRowCount();
    Label name = new Label(name(row));
    row.yarn().ifPresent(yarn -> name.setGraphic(palette.swatch(yarn)));
    name.setWrapText(true);
    name.setMinHeight(USE_PREF_SIZE);
    name.getStyleClass().addAll("cost-name", "cost-depth-" + row.depth());
    String amounts = row.depth() == 0 ? "cost-sum" : row.depth() == 1 ? "cost-part" : "cost-yarn";
    name.getStyleClass().add(amounts);
    WhyBelow below = new WhyBelow("cost-" + row.depth() + "-" + row.name(), opened, BecauseWords.ON_SCREEN);
    if (compared) {
      addRow(line, name, amount(money(row.now()), amounts), amount(money(row.then()), amounts), amount(row.difference(), "cost-difference"));
    } else {
      addRow(line, name, amount(row.length().map(Wording::yarn).orElse(""), "cost-length"), explained(row, amounts, below));
    }
    if (row.depth() == 0) {
      getChildren().stream().filter(node -> Integer.valueOf(line).equals(getRowIndex(node))).forEach(node -> node.getStyleClass().add("cost-first"));
    }
    if (!row.detail().isEmpty()) {
      Label detail = Labels.quiet(row.detail());
      detail.getStyleClass().add("cost-detail-" + row.depth());
      add(detail, 0, line + 1, AMOUNTS + 1, 1);
    }
    if (!compared && row.why().isPresent()) {
      add(below, 0, getRowCount(), AMOUNTS, 1);
    }
  }

  /** The amount of a line, which can be asked what it is made of. */
  private static Labeled explained(CostRow row, String style, WhyBelow below) {
    if (row.why().isEmpty()) {
      return amount(money(row.now()), style);
    }
    Labeled amount = below.figure("amount", name(row), money(row.now()), row.why().get());
    amount.getStyleClass().addAll("cost-amount", style);
    setValignment(amount, VPos.TOP);
    return amount;
  }

  private static String name(CostRow row) {
    return row.isTotal() ? Say.text("Total") : row.isNamed() ? row.name() : Say.known(row.name());
  }

  private static String money(Optional<Money> amount) {
    return amount.map(Wording::amount).orElse("");
  }

  private static Label amount(String words, String style) {
    Label amount = new Label(words);
    amount.setMinWidth(USE_PREF_SIZE);
    amount.getStyleClass().addAll("cost-amount", style);
    setValignment(amount, VPos.TOP);
    return amount;
  }
}
