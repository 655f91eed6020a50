package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The yarn on order, below the plans that may be waiting for it. */
final class OnOrderPart extends VBox {
  private static final double ROW_HEIGHT = 30;
  private final OnOrderModel model;

  /** @param order opens the form by which yarn is ordered */
  OnOrderPart(OnOrderModel model, Runnable order) {
    this.model = model;
    getStyleClass().add("on-order");
    Button open = new Button(Say.text("Order yarn"));
    open.setId("open-order");
    open.setMinWidth(USE_PREF_SIZE);
    open.setOnAction(_ -> order.run());
    HBox top = new HBox(Labels.heading(Say.text("On order")), Labels.quiet(summary()), Labels.gap(), open);
    top.getStyleClass().add("reason-line");
    Node table = table();
    Node acts = acts();
    ObservableValue<Boolean> any = Bindings.isNotEmpty(model.rows());
    Labels.showOnly(table, any);
    Labels.showOnly(acts, model.chosenProperty().map(chosen -> !chosen.isEmpty()));
    getChildren().addAll(top, table, acts);
  }

  private ObservableValue<String> summary() {
    return Bindings.createStringBinding(
        () -> model.rows().isEmpty()
            ? Say.text("Nothing. Yarn that is ordered stands here until it arrives, and can be counted above.")
            : summary(model.rows(), model.chosenProperty().get().size()), model.rows(), model.chosenProperty());
  }

  private static String summary(List<ExpectedRow> rows, int chosen) {
    long late = rows.stream().filter(ExpectedRow::isLate).count();
    String skeins = Say.count(rows.size(), "{0} skein", "{0} skeins");
    String all = late == 0 ? skeins : Say.text("{0}, {1} late", skeins, late);
    return chosen == 0 ? Say.text("{0}; choose what has come.", all) : Say.text("{0}, {1} chosen", all, chosen);
  }

  private Node table() {
    TableView<ExpectedRow> table = new TableView<>(model.rows());
    TableColumn<ExpectedRow, Amount> metres = column("metres", Say.text("Metres"), 90, ExpectedRow::metres);
    metres.getStyleClass().add("amount");
    TableColumn<ExpectedRow, String> price = column("price", Say.text("Price"), 80, ExpectedRow::price);
    price.getStyleClass().add("amount");
    TableColumn<ExpectedRow, ExpectedRow> state = column("when", Say.text("When"), 110, row -> row);
    state.setCellFactory(_ -> new LateCell());
    table.getColumns().setAll(List.of(
        column("code", Say.text("Code"), 60, ExpectedRow::code), column("yarn", Say.text("Yarn"), 110, row -> row.skein().yarn().yarn()),
            column("colour", Say.text("Colour"), 90, row -> row.skein().yarn().colour()),
        column("lot", Say.text("Lot"), 60, row -> row.skein().lot()), metres, price, column("expected", Say.text("Expected"), 90, ExpectedRow::due), state));
    table.setId("on-order");
    table.setAccessibleText(Say.text("Yarn on order"));
    table.setFixedCellSize(ROW_HEIGHT);
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    ListChangeListener<ExpectedRow> chosen = _ -> model.choose(List.copyOf(table.getSelectionModel().getSelectedItems()));
    table.getSelectionModel().getSelectedItems().addListener(chosen);
    table.getStyleClass().add("on-order-table");
    return table;
  }

  private Node acts() {
    TextField day = field("order-day", Say.text("Another day"), model.day().textProperty(), model::put);
    day.setPrefColumnCount(9);
    TextField reason = field("order-reason", Say.text("Why it will not come"), model.reasonProperty(), model::cancel);
    HBox acts = new HBox(
        act(Say.text("Arrived"), "arrived", model::arrive, model.arriveAct()).main(), act(Say.text("Expect it then"), "expect-then", model::put, model.putAct()).after(day),
        act(Say.text("Give it up"), "give-up", model::cancel, model.cancelAct()).after(reason));
    acts.getStyleClass().add("on-order-acts");
    return acts;
  }

  private static TextField field(String id, String name, StringProperty text, Runnable doing) {
    TextField field = new TextField();
    field.setId(id);
    field.setPromptText(name);
    field.setAccessibleText(name);
    field.textProperty().bindBidirectional(text);
    field.setOnAction(_ -> doing.run());
    return field;
  }

  private static ActButton act(String name, String id, Runnable doing, Act act) {
    return new ActButton(name, doing, act.possibleProperty(), act.whyNotProperty()).named(id);
  }

  private static <T> TableColumn<ExpectedRow, T> column(String id, String name, double width, Function<ExpectedRow, T> of) {
    TableColumn<ExpectedRow, T> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
