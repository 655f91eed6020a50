package hankbook.desktop;

import atlantafx.base.theme.Styles;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/** One plan in the list: its name, how it stands and how far it has come. */
final class PlanCell extends ListCell<PlanRow> {
  private final Label name = new Label();
  private final HBox words = new HBox();
  private final VBox content = new VBox(name, words);
  private Subscription watching = Subscription.EMPTY;

  PlanCell() {
    getStyleClass().add("plan-cell");
    name.getStyleClass().add(Styles.TEXT_BOLD);
    words.getStyleClass().add("plan-cell-words");
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable PlanRow row, boolean empty) {
    super.updateItem(row, empty);
    watching.unsubscribe();
    watching = Subscription.EMPTY;
    setGraphic(row == null || empty ? null : content);
    if (row != null && !empty) {
      name.setText(row.name());
      watching = watch(row.standingProperty(), row).and(watch(row.lifeProperty(), row));
    }
  }

  private Subscription watch(ObservableValue<?> value, PlanRow row) {
    return value.subscribe(_ -> show(row));
  }

  private void show(PlanRow row) {
    Label life = new Label(row.lifeProperty().get().word());
    life.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    words.getChildren().setAll(life);
    setAccessibleText(row.name() + ", " + life.getText());
    if (!row.lifeProperty().get().isOver()) {
      words.getChildren().addFirst(StandingMark.labelled(row.standingProperty().get()));
      setAccessibleText(row.name() + ", " + row.standingProperty().get().word() + ", " + life.getText());
    }
  }
}
