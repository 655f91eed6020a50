package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.ValuedStock;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** The stock of known cost in groups. */
final class ValueTable extends TableView<ValueLine> {
  private static final double ROW_HEIGHT = 30;

  private final TableColumn<ValueLine, String> name = column("yarn", Say.text("Yarn"), 150, ValueLine::name);
  private final TableColumn<ValueLine, String> value = column("value", Say.text("Value"), 84, ValueLine::value);

  /** @param enter leads to where a purchase is entered */
  ValueTable(Runnable enter) {
    List<TableColumn<ValueLine, String>> amounts = List.of(column("metres", Say.text("Metres"), 92, ValueLine::metres), column("mass", Say.text("Mass"), 92, ValueLine::mass),
        value, column("per-m", Say.text("per m"), 64, ValueLine::perMetre));
    amounts.forEach(column -> column.getStyleClass().add("amount"));
    getColumns().add(name);
    getColumns().addAll(amounts);
    setId("value");
    setAccessibleText(Say.text("Value of the stock"));
    setFixedCellSize(ROW_HEIGHT);
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(nothing(enter));
  }

  private static VBox nothing(Runnable enter) {
    Label words = Labels.quiet(Say.text("Yarn counts here once it is known what was paid for it. Enter a purchase and say which skeins it paid for, or type "
            + "a price when a skein is received."));
    Button purchase = new Button(Say.text("Enter a purchase"));
    purchase.setId("value-enter");
    purchase.setOnAction(_ -> enter.run());
    VBox nothing = new VBox(Labels.heading(Say.text("No yarn of known cost is in the house")), words, purchase);
    nothing.getStyleClass().addAll("nothing-yet", "costs-nothing");
    return nothing;
  }

  /** Shows lines; the one that was chosen stays chosen. */
  void show(List<ValueLine> lines, ValuedStock stock, String grouped) {
    int chosen = getSelectionModel().getSelectedIndex();
    name.setText(grouped);
    value.setText(Say.text("Value, {0}", stock.value().currency()));
    getItems().setAll(lines);
    if (chosen >= 0 && chosen < lines.size()) {
      getSelectionModel().select(chosen);
    }
  }

  private static TableColumn<ValueLine, String> column(String id, String name, double width, Function<ValueLine, String> of) {
    TableColumn<ValueLine, String> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
