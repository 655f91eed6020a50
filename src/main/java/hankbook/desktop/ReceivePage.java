package hankbook.desktop;

import hankbook.desktop.colour.ColourPicker;
import hankbook.desktop.say.Say;
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
    first = box("code", Say.text("Code"), "");
    layOut();
    fill(heading(Labels.title(Say.text("Receive a skein"))), grid);
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
    grid.addRow(0, first, form());
    grid.addRow(1, box("yarn", Say.text("Yarn"), ""), colour);
    grid.addRow(2, box("fibre", Say.text("Fibre"), Say.text("wool")), hex());
    grid.add(picking(), 0, 3, 2, 1);
    grid.addRow(4, box("grist", Say.text("Grist"), "Nm 20/2"), box("length", Say.text("Length on the label"), "950 m"));
    grid.addRow(5, box("gross", Say.text("Weight with its cone"), "240 g"), box("tare", Say.text("Weight of the cone"), "40 g"));
    grid.addRow(6, box("turns", Say.text("Turns on the reel"), "950"), box("reel", Say.text("Once round the reel"), "1 m"));
    grid.add(more(), 0, 7, 2, 1);
    grid.addRow(8, box("lot", Say.text("Lot"), ""), box("location", Say.text("Place"), Say.text("chest")));
    grid.addRow(9, box("cost", Say.text("Cost"), "24.50 EUR"), box("received", Say.text("Received"), "2026-03-14"));
    grid.addRow(10, opened());
  }

  private Node foot() {
    Label reading = Labels.quiet(model.readingProperty());
    reading.setId("reading");
    Label sure = Labels.quiet(model.surenessProperty());
    sure.setId("sureness");
    Label preview = Labels.quiet(model.previewProperty());
    preview.setId("lot-preview");
    Label disagrees = Labels.fault(model.disagreementProperty());
    disagrees.setId("disagreement");
    ActButton receive = new ActButton(Say.text("Receive skein"), model::receive, model.act().possibleProperty(), model.act().whyNotProperty());
    receive.words(model.manyProperty().map(many -> many ? Say.text("Receive all of them") : Say.text("Receive skein")));
    VBox foot = new VBox(count(), reading, preview, sure, disagrees, receive.named("receive").main().belowReason());
    foot.getStyleClass().add("side-foot");
    return foot;
  }

  /** How many come, and where there are several, how they are told apart. */
  private Node count() {
    CountField count = new CountField(Say.text("Skeins of this lot"), "receive-count", model.countProperty()).entering(model::receive);
    Label how = Labels.quiet(Say.text("Their codes are numbered on from the first. Where they differ, list lengths or weights, such as 102 g, 99 g, 101 g."));
    Labels.showOnly(how, model.manyProperty());
    return new VBox(4, count, Labels.fault(model.countMessageProperty()), how);
  }

  private FieldBox hex() {
    return box("hex", Say.text("Screen colour"), "#2f5d8a").withSwatch();
  }

  /** Takes the colour from a photograph. */
  private TitledPane picking() {
    ColourPicker picker = new ColourPicker(model.colour());
    picker.getStyleClass().add("act-body");
    TitledPane pane = folded("receive-pick", Say.text("Pick its colour"), picker);
    model.field("hex").subscribe(_ -> pane.setExpanded(false));
    return pane;
  }

  /** What few balances need. */
  private TitledPane more() {
    VBox content = new VBox(
        box("regain", Say.text("Moisture in it when weighed"), "8.5 %"), Labels.quiet(Say.text("Of its dry mass, where you measured it; without it the usual one of its fibre is taken.")));
    content.getStyleClass().add("act-body");
    return folded("receive-more", Say.text("More about its weight"), content);
  }

  private static TitledPane folded(String id, String name, Node content) {
    TitledPane pane = new TitledPane(name, content);
    pane.getStyleClass().add("more");
    pane.setId(id);
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
    forms.setAccessibleText(Say.text("Form"));
    forms.setId("receive-form");
    if (model.field("form").get().isEmpty()) {
      model.field("form").set(PackageForm.CONE.toString());
    }
    forms.valueProperty().bindBidirectional(model.field("form"));
    Label label = new Label(Say.text("Form"));
    label.setLabelFor(forms);
    label.getStyleClass().add("field-name");
    VBox box = new VBox(label, forms);
    box.getStyleClass().add("field-box");
    return box;
  }

  private Node opened() {
    CheckBox box = new CheckBox(Say.text("Opened before"));
    box.setId("receive-opened");
    box.setSelected(model.field("opened").get().equals("yes"));
    box.selectedProperty().subscribe(opened -> model.field("opened").set(opened ? "yes" : "no"));
    return box;
  }
}
