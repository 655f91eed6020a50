package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.YarnColour;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What a plan asks of one yarn, and whether it gets it. */
final class AheadYarnCell extends TableCell<AheadRow, AheadRow> {
  private static final String CHANGED = "ahead-changed";

  private final YarnColour yarn;
  private final Label need = new Label();
  private final VBox content = new VBox(need);

  AheadYarnCell(YarnColour yarn) {
    this.yarn = yarn;
    getStyleClass().add("ahead-cell");
  }

  @Override
  protected void updateItem(@Nullable AheadRow row, boolean empty) {
    super.updateItem(row, empty);
    AheadCell cell = empty || row == null ? null : row.cells().get(yarn);
    getStyleClass().remove(CHANGED);
    setGraphic(cell == null ? null : content);
    if (cell != null && row != null) {
      need.setText(cell.need());
      Label verdict = StandingMark.labelled(cell.standing());
      verdict.setText(cell.verdict());
      content.getChildren().setAll(need, verdict);
      setAccessibleText(Say.text("{0}, {1}, needs {2}, {3}", row.name(), yarn, cell.need(), cell.verdict()));
      if (cell.changed()) {
        getStyleClass().add(CHANGED);
      }
    }
  }
}
