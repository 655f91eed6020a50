package hankbook.desktop;

import hankbook.cost.PaidFor;
import hankbook.desktop.say.Say;
import hankbook.studio.ValuedStock;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** What was paid, and where it went: by what each skein cost, whatever method values the stock. */
final class PaidPane extends VBox {
  private final GridPane lines = new GridPane();
  private final Label sum = Labels.heading("");
  private final Label toCome = Labels.quiet("");

  PaidPane() {
    ColumnConstraints words = new ColumnConstraints();
    words.setHgrow(Priority.ALWAYS);
    ColumnConstraints amounts = new ColumnConstraints();
    amounts.setHalignment(HPos.RIGHT);
    amounts.setMinWidth(USE_PREF_SIZE);
    lines.getColumnConstraints().setAll(words, amounts);
    lines.getStyleClass().add("paid-lines");
    sum.setId("paid-sum");
    Labels.showOnly(toCome, toCome.textProperty().map(text -> !text.isEmpty()));
    getStyleClass().add("paid");
    getChildren().addAll(Labels.heading(Say.text("What was paid, and where it went")), lines, sum, toCome,
        Labels.quiet(Say.text("Each skein at its own cost, whatever method values the stock.")));
  }

  void show(ValuedStock stock) {
    PaidFor paid = stock.paid();
    List<PaidLine> now = PaidLine.of(paid);
    lines.getChildren().clear();
    now.forEach(this::add);
    sum.setText(sum(paid.paid(), now));
    String later = Wording.money(paid.toCome());
    String words = stock.on().isPresent()
        ? Say.text("Beside it {0} for skeins that have no length in the ledger by then.", later)
        : Say.text("Beside it {0} for skeins that have no length in the ledger yet.", later);
    toCome.setText(paid.toCome().isZero() ? "" : words);
  }

  /** Both sides of it. */
  static String sum(Money paid, List<PaidLine> lines) {
    Money parts = Money.total(paid.getCurrencyUnit(), lines.stream().filter(PaidLine::sum).map(PaidLine::amount).toList());
    return Say.text("Paid {0} = {1} in all of these.", Wording.money(paid), Wording.money(parts));
  }

  private void add(PaidLine line) {
    Label words = new Label(line.words());
    words.setWrapText(true);
    Label amount = new Label(Wording.amount(line.amount()));
    words.getStyleClass().add(line.sum() ? "landing-line" : "landing-skein");
    amount.getStyleClass().add(line.sum() ? "landing-line" : "landing-number");
    amount.setMinWidth(USE_PREF_SIZE);
    lines.addRow(lines.getRowCount(), words, amount);
  }
}
