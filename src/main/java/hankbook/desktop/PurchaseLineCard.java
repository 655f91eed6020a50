package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A line of a purchase: what was bought, its price, and the skeins it paid for. */
final class PurchaseLineCard extends VBox {
  private final PurchaseFields fields;
  private final PurchaseLineForm line;
  private final FlowPane skeins = new FlowPane();
  private final ToggleButton choose = new ToggleButton();
  private final Button remove = new Button(Say.text("Remove"));
  private final SkeinPickerPane picker;
  private final FieldBox words;
  private final FieldBox price;
  private String id = "";

  /** @param enter is run by the Enter key */
  PurchaseLineCard(PurchaseFields fields, PurchaseLineForm line, Runnable enter) {
    this.fields = fields;
    this.line = line;
    picker = new SkeinPickerPane(line.picker());
    words = new FieldBox(Say.text("What was bought"), Say.text("3 cones Skerry 16/2, Chalk"), line.wordsProperty(), line.wordsMessageProperty());
    price = new FieldBox(Say.text("Price of all of it"), "3 x 19.80", line.priceProperty(), line.priceMessageProperty()).quantity();
    price.getStyleClass().add("purchase-price");
    HBox.setHgrow(words, Priority.ALWAYS);
    words.field().setOnAction(_ -> enter.run());
    price.field().setOnAction(_ -> enter.run());
    HBox top = new HBox(words, price);
    top.getStyleClass().add("field-pair");
    Labels.showOnly(picker, isPicking());
    skeins.getStyleClass().add("purchase-skeins");
    getStyleClass().add("purchase-line");
    getChildren().addAll(top, skeins, picker);
    layOutButtons();
    ListChangeListener<String> changed = _ -> showSkeins();
    line.skeins().addListener(changed);
    showSkeins();
  }

  /** Whether it is the card of a line. */
  boolean shows(PurchaseLineForm one) {
    return one == line;
  }

  /** Gives its nodes names that begin so. */
  void name(String begin) {
    id = begin;
    words.named(id + "-words");
    price.named(id + "-price");
    choose.setId(id + "-choose");
    remove.setId(id + "-remove");
    picker.name(id);
    showSkeins();
  }

  /** Puts the keyboard into the line; before the first pulse it would not be in the scene yet. */
  void begin() {
    applyCss();
    words.field().requestFocus();
  }

  private ObservableValue<Boolean> isPicking() {
    return fields.pickingProperty().map(open -> open.filter(one -> one == line).isPresent());
  }

  private void layOutButtons() {
    choose.getStyleClass().add("small");
    choose.setOnAction(_ -> pick(choose.isSelected()));
    isPicking().subscribe(choose::setSelected);
    choose.textProperty().bind(choose.selectedProperty().map(open -> open ? Say.text("Done") : Say.text("Choose skeins")));
    remove.setAccessibleText(Say.text("Remove the line"));
    remove.getStyleClass().addAll("flat", "small");
    remove.setOnAction(_ -> fields.remove(line));
    Labels.showOnly(remove, Bindings.size(fields.lines()).greaterThan(1));
  }

  private void showSkeins() {
    skeins.getChildren().setAll(Labels.quiet(line.skeins().isEmpty() ? Say.text("No skein yet.") : Say.count(line.skeins().size(), "{0} skein:", "{0} skeins:")));
    line.skeins().forEach(code -> skeins.getChildren().add(chip(code)));
    skeins.getChildren().addAll(choose, remove);
  }

  private Node chip(String code) {
    Button out = new Button(code + " ×");
    out.setAccessibleText(Say.text("Take {0} out of the line", code));
    out.setId(id + "-out-" + code);
    out.getStyleClass().addAll("small", "skein-chip");
    out.setOnAction(_ -> line.remove(code));
    return out;
  }

  private void pick(boolean open) {
    fields.pick(open ? Optional.of(line) : Optional.empty());
    if (open) {
      picker.begin();
    }
  }
}
