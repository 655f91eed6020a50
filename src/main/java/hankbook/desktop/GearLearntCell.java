package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/**
 * What finished plans say of a loom, with a button that takes it over.
 *
 * @param <T> a loom or a reed
 */
final class GearLearntCell<T> extends TableCell<GearRow<T>, GearRow<T>> {
  private final Consumer<GearRow<T>> takeOver;

  GearLearntCell(Consumer<GearRow<T>> takeOver) {
    this.takeOver = takeOver;
  }

  @Override
  protected void updateItem(@Nullable GearRow<T> row, boolean empty) {
    super.updateItem(row, empty);
    setGraphic(row == null || empty || row.learnt().isEmpty() ? null : line(row));
  }

  private HBox line(GearRow<T> row) {
    HBox line = new HBox(new Label(row.learnt()), Labels.gap());
    line.getStyleClass().add("beside");
    row.asLearnt().ifPresentOrElse(as -> line.getChildren().add(button(row, as.act())), () -> line.getChildren().add(Labels.quiet(Say.text("as it has"))));
    return line;
  }

  private Button button(GearRow<T> row, String act) {
    Button button = new Button(Say.text("Take over"));
    button.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    button.setId("take-over-" + row.name().replace(' ', '-'));
    button.setAccessibleText(act);
    button.setTooltip(new Tooltip(act));
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> takeOver.accept(row));
    return button;
  }
}
