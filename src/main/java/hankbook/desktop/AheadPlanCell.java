package hankbook.desktop;

import java.util.function.Consumer;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A plan's turn, its name, which opens it, and how it stands. */
final class AheadPlanCell extends TableCell<AheadRow, AheadRow> {
  private final Label turn = Labels.quiet("");
  private final Hyperlink name = new Hyperlink();
  private final HBox state = new HBox();
  private final HBox content = new HBox(turn, new VBox(name, state));

  /**
   * @param open opens a plan by its name
   * @param moved how far the table is moved sideways
   */
  AheadPlanCell(Consumer<String> open, ObservableDoubleValue moved) {
    content.getStyleClass().add("ahead-plan-line");
    turn.getStyleClass().add("ahead-turn");
    turn.setMinWidth(USE_PREF_SIZE);
    name.setFocusTraversable(false);
    name.setOnAction(_ -> open.accept(name.getText()));
    StayingColumn.hold(this, moved);
  }

  @Override
  protected void updateItem(@Nullable AheadRow row, boolean empty) {
    super.updateItem(row, empty);
    setGraphic(empty || row == null ? null : content);
    if (!empty && row != null) {
      turn.setText(Integer.toString(row.turn()));
      name.setText(row.name());
      name.setVisited(false);
      state.getChildren().setAll(row.standing().<Node>map(StandingMark::labelled).orElseGet(() -> Labels.quiet(row.words())));
      setAccessibleText(row.turn() + ", " + row.name() + ", " + row.state());
    }
  }
}
