package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.reckon.Finding;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** What finished plans taught, a line for each thing and group. */
final class LearntTable extends TableView<Finding> {
  private static final double PADDING = 16;

  LearntTable(LearntModel model) {
    super(model.rows());
    getColumns().setAll(List.of(
        column("what", Say.text("What"), 92, finding -> Say.known(finding.which().words())), column("cloths", Say.text("Cloths"), 112, finding -> Wording.phrase(finding.group().phrase())),
        amount(column("plans", Say.text("Plans"), 52, finding -> Integer.toString(finding.count()))),
            amount(column("mean", Say.text("Mean"), 84, finding -> Wording.phrase(finding.which().unit().inFull(finding.mean())))),
        amount(column("spread", Say.text("Spread"), 66, LearntWords::spread)), column("next-95-of-100", Say.text("Next, 95 of 100"), 112, LearntWords::range), column("odd-ones", Say.text("Odd ones"), 84, LearntWords::odd)));
    setId("learnt-findings");
    setAccessibleText(Say.text("What was learnt"));
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(Labels.quiet(Say.text("Nothing of such cloths.")));
  }

  private static TableColumn<Finding, String> amount(TableColumn<Finding, String> column) {
    column.getStyleClass().add("amount");
    return column;
  }

  private static TableColumn<Finding, String> column(String id, String name, double width, Function<Finding, String> of) {
    TableColumn<Finding, String> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setCellFactory(_ -> new Wrapped());
    column.setMinWidth(width);
    column.setPrefWidth(width * 1.3);
    column.setSortable(false);
    return column;
  }

  /** Over as many lines as it needs, so that nothing is cut off. */
  private static final class Wrapped extends TableCell<Finding, String> {
    private final Text words = new Text();

    Wrapped() {
      words.getStyleClass().add("learnt-words");
      words.wrappingWidthProperty().bind(widthProperty().subtract(PADDING));
      words.textProperty().bind(itemProperty().map(LearntWords::unbroken));
    }

    @Override
    protected void updateItem(@Nullable String item, boolean empty) {
      super.updateItem(item, empty);
      setGraphic(item == null || empty ? null : words);
      setAccessibleText(item);
    }
  }
}
