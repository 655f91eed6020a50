package hankbook.desktop;

import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
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

  CostTable(List<CostRow> rows, CurrencyUnit currency, boolean compared, YarnPalette palette) {
    this.palette = palette;
    this.compared = compared;
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
      addRow(0, Labels.quiet(currency.getCode()), head("as it is"), head("what if"), head("difference"));
    } else {
      addRow(0, Labels.quiet(""), head("yarn"), head(currency.getCode()));
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
    Label name = new Label(row.name());
    row.yarn().ifPresent(yarn -> name.setGraphic(palette.swatch(yarn)));
    name.setWrapText(true);
    name.setMinHeight(USE_PREF_SIZE);
    name.getStyleClass().addAll("cost-name", "cost-depth-" + row.depth());
    String amounts = row.depth() == 0 ? "cost-sum" : row.depth() == 1 ? "cost-part" : "cost-yarn";
    name.getStyleClass().add(amounts);
    if (compared) {
      addRow(line, name, amount(money(row.now()), amounts), amount(money(row.then()), amounts), amount(row.difference(), "cost-difference"));
    } else {
      addRow(line, name, amount(row.length().map(Wording::yarn).orElse(""), "cost-length"), amount(money(row.now()), amounts));
    }
    if (row.depth() == 0) {
      getChildren().stream().filter(node -> Integer.valueOf(line).equals(getRowIndex(node))).forEach(node -> node.getStyleClass().add("cost-first"));
    }
    if (!row.detail().isEmpty()) {
      Label detail = Labels.quiet(row.detail());
      detail.getStyleClass().add("cost-detail-" + row.depth());
      add(detail, 0, line + 1, AMOUNTS + 1, 1);
    }
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
