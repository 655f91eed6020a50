package hankbook.desktop.why;

import hankbook.plan.BecauseText;
import javafx.scene.control.Label;
import javafx.scene.control.TreeCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** A line of an explanation: its sign, what it is, and how much. */
final class WhyCell extends TreeCell<WhyLine> {
  private final BecauseText.Written written;
  private final Label sign = new Label();
  private final Label name = new Label();
  private final Label amount = new Label();
  private final HBox line;

  WhyCell(BecauseText.Written written) {
    this.written = written;
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    sign.getStyleClass().add("why-sign");
    sign.setMinWidth(USE_PREF_SIZE);
    name.setMinWidth(0);
    amount.getStyleClass().add("why-amount");
    amount.setMinWidth(USE_PREF_SIZE);
    line = new HBox(sign, name, gap, amount);
    line.getStyleClass().add("why-line");
    getStyleClass().add("why-cell");
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable WhyLine item, boolean empty) {
    super.updateItem(item, empty);
    if (item == null || empty) {
      setGraphic(null);
      setAccessibleText("");
    } else {
      sign.setText(item.sign());
      sign.setManaged(getTreeItem().getParent() != null);
      name.setText(written.name(item.figure()));
      amount.setText(written.amount(item.figure()));
      setGraphic(line);
      setAccessibleText((item.sign() + " " + name.getText() + ": " + amount.getText()).strip());
    }
  }
}
