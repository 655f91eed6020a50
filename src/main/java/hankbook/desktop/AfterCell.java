package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One plan in the list after the cloth: its name, how it stands as a shape and in words, and over the first of a sort what sort that is. */
final class AfterCell extends ListCell<AfterRow> {
  private final Label heading = Labels.heading("");
  private final Label name = new Label();
  private final Label words = Labels.quiet("");
  private final Region mark = new Region();
  private final VBox content = new VBox(heading, new HBox(6, mark, name), words);

  AfterCell() {
    getStyleClass().add("plan-cell");
    name.getStyleClass().add(Styles.TEXT_BOLD);
    heading.managedProperty().bind(heading.visibleProperty());
    heading.getStyleClass().add("after-heading");
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable AfterRow row, boolean empty) {
    super.updateItem(row, empty);
    setGraphic(row == null || empty ? null : content);
    if (row != null && !empty) {
      heading.setText(row.heading());
      heading.setVisible(!row.heading().isEmpty());
      name.setText(row.plan());
      words.setText(row.words());
      mark.getStyleClass().setAll(row.isSquared() ? "after-squared" : "after-waiting");
      setAccessibleText(row.isSquared() ? Say.text("{0}, squared, {1}", row.plan(), row.words()) : row.plan() + ", " + row.words());
    }
  }
}
