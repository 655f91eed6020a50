package hankbook.desktop;

import hankbook.yarn.PackageForm;
import java.util.Arrays;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The form for receiving a skein, beside the table. */
final class ReceivePage extends SidePage {
  private final ReceiveModel model;
  private final GridPane grid = new GridPane();
  private final FieldBox first;

  ReceivePage(ReceiveModel model, Runnable close) {
    super(close);
    this.model = model;
    first = box("code", "Code", "");
    layOut();
    fill(heading(Labels.title("Receive a skein")), grid);
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
    FieldBox colour = box("colour", "Colour", "");
    colour.field().focusedProperty().subscribe(focused -> {
      if (!focused) {
        model.fillFromShelf();
      }
    });
    grid.addRow(0, first, form());
    grid.addRow(1, box("yarn", "Yarn", ""), colour);
    grid.addRow(2, box("fibre", "Fibre", "wool"), box("hex", "Hex", "#2f5d8a").withSwatch());
    grid.addRow(3, box("grist", "Grist", "Nm 20/2"), box("length", "Length on the label", "950 m"));
    grid.addRow(4, box("gross", "Weight with its cone", "240 g"), box("tare", "Weight of the cone", "40 g"));
    grid.addRow(5, box("turns", "Turns on the reel", "950"), box("reel", "Once round the reel", "1 m"));
    grid.add(more(), 0, 6, 2, 1);
    grid.addRow(7, box("lot", "Lot", ""), box("location", "Place", "chest"));
    grid.addRow(8, box("cost", "Cost", "24.50 EUR"), box("received", "Received", "2026-03-14"));
    grid.addRow(9, opened());
  }

  private Node foot() {
    Label reading = Labels.quiet(model.readingProperty());
    reading.setId("reading");
    Label sure = Labels.quiet(model.surenessProperty());
    sure.setId("sureness");
    Label disagrees = Labels.fault(model.disagreementProperty());
    disagrees.setId("disagreement");
    ActButton receive = new ActButton("Receive skein", model::receive, model.act().possibleProperty(), model.act().whyNotProperty());
    VBox foot = new VBox(reading, sure, disagrees, receive.named("receive").main().belowReason());
    foot.getStyleClass().add("side-foot");
    return foot;
  }

  /** What few balances need. */
  private TitledPane more() {
    VBox content = new VBox(
        box("regain", "Moisture in it when weighed", "8.5 %"), Labels.quiet("Of its dry mass, where you measured it; without it the usual one of its fibre is taken."));
    content.getStyleClass().add("act-body");
    TitledPane pane = new TitledPane("More about its weight", content);
    pane.getStyleClass().add("more");
    pane.setId("receive-more");
    pane.setExpanded(false);
    pane.setAnimated(false);
    return pane;
  }

  private FieldBox box(String column, String name, String example) {
    FieldBox box = new FieldBox(name, example, model.field(column), model.message(column)).named("receive-" + column).quantityIf(column).withoutMessage();
    box.field().setOnAction(event -> model.receive());
    return box;
  }

  private Node form() {
    ComboBox<String> forms = new ComboBox<>();
    forms.getItems().setAll(Arrays.stream(PackageForm.values()).map(PackageForm::toString).toList());
    forms.setMaxWidth(Double.MAX_VALUE);
    forms.setAccessibleText("Form");
    forms.setId("receive-form");
    if (model.field("form").get().isEmpty()) {
      model.field("form").set(PackageForm.CONE.toString());
    }
    forms.valueProperty().bindBidirectional(model.field("form"));
    Label label = new Label("Form");
    label.setLabelFor(forms);
    label.getStyleClass().add("field-name");
    VBox box = new VBox(label, forms);
    box.getStyleClass().add("field-box");
    return box;
  }

  private Node opened() {
    CheckBox box = new CheckBox("Opened before");
    box.setId("receive-opened");
    box.setSelected(model.field("opened").get().equals("yes"));
    box.selectedProperty().subscribe(opened -> model.field("opened").set(opened ? "yes" : "no"));
    return box;
  }
}
