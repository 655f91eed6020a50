package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.time.LocalDate;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ListView;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Chooses skeins by typing: the list below follows, Enter takes what is typed, and one click takes all that came on a day. */
final class SkeinPickerPane extends VBox {
  private static final double ROW_HEIGHT = 28;
  private static final int ROWS = 5;

  private final SkeinPicker picker;
  private final TextField filter = new TextField();
  private final ListView<SkeinToPay> list;
  private final FlowPane days = new FlowPane(6, 4);
  private final Button chosen = new Button(Say.text("Take the chosen"));
  private final Button all = new Button();
  private String id = "";

  SkeinPickerPane(SkeinPicker picker) {
    this.picker = picker;
    this.list = new ListView<>(picker.shown());
    getStyleClass().add("skein-picker");
    filter.setPromptText(Say.text("Codes, yarn, lot or a day; Enter takes them"));
    filter.setAccessibleText(Say.text("Skeins to take into the line"));
    filter.textProperty().bindBidirectional(picker.filterProperty());
    filter.setOnAction(_ -> picker.enter());
    filter.addEventFilter(KeyEvent.KEY_PRESSED, this::downToTheList);
    getChildren().addAll(filter, Labels.fault(picker.messageProperty()), days, list(), acts());
    ListChangeListener<Map.Entry<LocalDate, Long>> changed = _ -> showDays();
    picker.days().addListener(changed);
    Labels.showOnly(days, picker.filterProperty().map(String::isBlank));
    showDays();
  }

  /** Gives its nodes names that begin so. */
  void name(String begin) {
    id = begin;
    filter.setId(id + "-find");
    list.setId(id + "-list");
    chosen.setId(id + "-chosen");
    all.setId(id + "-all");
    showDays();
  }

  /** Puts the keyboard where codes are typed; before the first pulse it would not be in the scene yet. */
  void begin() {
    applyCss();
    filter.requestFocus();
  }

  private void downToTheList(KeyEvent pressed) {
    if (pressed.getCode() == KeyCode.DOWN && !picker.shown().isEmpty()) {
      pressed.consume();
      list.requestFocus();
      list.getSelectionModel().selectFirst();
    }
  }

  private Node list() {
    list.setAccessibleText(Say.text("Skeins that no purchase paid for yet"));
    list.setFixedCellSize(ROW_HEIGHT);
    list.prefHeightProperty().bind(Bindings.createDoubleBinding(() -> 4 + ROW_HEIGHT * Math.clamp(picker.shown().size(), 2, ROWS), picker.shown()));
    list.setPlaceholder(Labels.quiet(Say.text("No skein that is still to be paid for answers to that.")));
    list.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    list.setCellFactory(_ -> new SkeinToPayCell());
    list.setOnKeyPressed(pressed -> {
      if (pressed.getCode() == KeyCode.ENTER) {
        addChosen();
      }
    });
    list.setOnMouseClicked(clicked -> {
      if (clicked.getClickCount() == 2) {
        addChosen();
      }
    });
    list.getStyleClass().add("skein-picker-list");
    return list;
  }

  private void addChosen() {
    picker.add(list.getSelectionModel().getSelectedItems().stream().toList());
    filter.requestFocus();
  }

  private Node acts() {
    chosen.setOnAction(_ -> addChosen());
    chosen.disableProperty().bind(Bindings.isEmpty(list.getSelectionModel().getSelectedItems()));
    all.textProperty().bind(Bindings.createStringBinding(() -> Say.text("Take all {0}", picker.shown().size()), picker.shown()));
    all.setOnAction(_ -> picker.addShown());
    all.disableProperty().bind(Bindings.isEmpty(picker.shown()));
    HBox acts = new HBox(6, chosen, all);
    acts.getChildren().forEach(act -> act.getStyleClass().add("small"));
    return acts;
  }

  private void showDays() {
    days.getChildren().clear();
    for (Map.Entry<LocalDate, Long> day : picker.days()) {
      Button button = new Button(Say.count(day.getValue(), "The one that came {1}", "All {0} that came {1}", day.getKey()));
      button.setId(id + "-day-" + day.getKey());
      button.getStyleClass().add("small");
      button.setOnAction(_ -> picker.addDay(day.getKey()));
      days.getChildren().add(button);
    }
  }
}
