package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Plans and variants in columns, in the place of the open plan. */
final class BesideView extends VBox {
  private final PlansModel plans;
  private final BesideModel model;
  private final ComboBox<String> another = new ComboBox<>();

  BesideView(PlansModel plans) {
    this.plans = plans;
    this.model = plans.beside();
    getStyleClass().add("beside-view");
    addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ESCAPE) {
        model.close();
      }
    });
    BesideTable table = new BesideTable(plans);
    ScrollPane scroll = new ScrollPane(table);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plan-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(top(), more(), Labels.fault(model.troubleProperty()), Labels.fault(model.answer().troubleProperty()), scroll);
    model.openProperty().subscribe(open -> {
      if (open) {
        another.requestFocus();
      }
    });
    model.columns().addListener((ListChangeListener<BesideColumn>) _ -> another.setValue(null));
  }

  private Node top() {
    Button close = new Button(Say.text("Back to the plan"));
    close.setId("beside-close");
    close.getStyleClass().addAll("flat", "small");
    close.setMinWidth(USE_PREF_SIZE);
    close.setOnAction(_ -> model.close());
    HBox top = new HBox(Labels.title(Say.text("Side by side")), Labels.gap(), close);
    top.getStyleClass().add("page-top");
    return top;
  }

  /** What can be laid beside them, and why no more can. */
  private Node more() {
    another.setId("beside-another");
    another.setPromptText(Say.text("Another plan…"));
    another.setAccessibleText(Say.text("Another plan to lay beside them"));
    another.setOnShowing(_ -> another.getItems().setAll(model.others(plans.names())));
    another.setOnAction(_ -> {
      if (another.getValue() != null) {
        model.addPlan(another.getValue());
      }
    });
    Button vary = new Button(Say.text("One more variant"));
    vary.setId("beside-vary");
    vary.setOnAction(_ -> model.addVariant());
    another.disableProperty().bind(model.noMoreProperty().isNotEmpty());
    vary.disableProperty().bind(model.noMoreProperty().isNotEmpty());
    FlowPane line = new FlowPane(8, 6, another, vary, Labels.quiet(model.noMoreProperty()));
    line.getStyleClass().add("beside-more");
    String words = Say.text("Each is held against the shelf by itself: what is reserved for another of them counts as free. A variant is tried here and changes no plan.");
    return new VBox(6, Labels.quiet(words), line);
  }
}
