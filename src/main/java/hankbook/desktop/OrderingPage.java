package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The form by which yarn is put on order. */
final class OrderingPage extends SidePage {
  private final OrderingModel model;
  private final GridPane grid = new GridPane();
  private final FieldBox first;

  OrderingPage(OrderingModel model, Runnable close) {
    super(close);
    this.model = model;
    first = box("yarn", Say.text("Yarn"), "");
    layOut();
    fill(heading(Labels.title(Say.text("Order yarn"))), grid);
    getChildren().add(foot());
  }

  /** Takes the keyboard; before the first pulse the fields would not be in the scene yet. */
  void begin() {
    model.begin();
    applyCss();
    first.field().requestFocus();
  }

  private void layOut() {
    grid.getStyleClass().add("form");
    ColumnConstraints half = new ColumnConstraints();
    half.setPercentWidth(50);
    grid.getColumnConstraints().setAll(half, half);
    FieldBox colour = box("colour", Say.text("Colour"), "");
    colour.field().focusedProperty().subscribe(focused -> {
      if (!focused) {
        model.fillFromShelf();
      }
    });
    FieldBox alike = ordering(new FieldBox(Say.text("How many alike"), "1", model.alikeProperty(), model.alikeMessageProperty()).named("order-alike"));
    FieldBox due = ordering(new FieldBox(Say.text("Expected on"), "2026-12-20", model.due().textProperty(), model.dueMessageProperty()).named("order-due"));
    grid.addRow(0, first, colour);
    grid.addRow(1, box("fibre", Say.text("Fibre"), "wool"), box("hex", Say.text("Hex"), "#2f5d8a").withSwatch());
    grid.addRow(2, box("length", Say.text("Length of each"), "950 m"), box("gross", Say.text("or weight of yarn"), "200 g"));
    grid.addRow(3, box("grist", Say.text("Grist"), "Nm 20/2"), box("lot", Say.text("Lot"), ""));
    grid.addRow(4, alike, box("cost", Say.text("Price of each"), "24.50 EUR"));
    grid.addRow(5, due);
  }

  private FieldBox box(String column, String name, String example) {
    return ordering(new FieldBox(name, example, model.field(column), model.message(column)).named("order-" + column).quantityIf(column));
  }

  private FieldBox ordering(FieldBox box) {
    box.field().setOnAction(_ -> model.order());
    return box;
  }

  private VBox foot() {
    Label reading = Labels.quiet(model.readingProperty());
    reading.setId("order-reading");
    VBox foot =
        new VBox(reading, new ActButton(Say.text("Put on order"), model::order, model.act().possibleProperty(), model.act().whyNotProperty()).named("put-on-order").main());
    foot.getStyleClass().add("side-foot");
    return foot;
  }
}
