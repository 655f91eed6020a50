package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Finds plans by plain words, and puts them in order. */
final class PlanSearch extends VBox {
  /**
   * @param leave puts the keyboard into the list
   */
  PlanSearch(PlanList list, Runnable leave) {
    TextField words = new TextField();
    words.setId("plan-search");
    words.setPromptText(Say.text("Find: short woad…"));
    words.setAccessibleText(Say.text("Find plans by name, yarn, verdict or state"));
    words.textProperty().bindBidirectional(list.wordsProperty());
    words.addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ESCAPE && !words.getText().isEmpty()) {
        words.clear();
        pressed.consume();
      } else if (pressed.getCode() == KeyCode.ENTER || pressed.getCode() == KeyCode.DOWN) {
        leave.run();
        pressed.consume();
      }
    });
    ComboBox<PlanOrdering> order = new ComboBox<>();
    order.setId("plan-order");
    order.setAccessibleText(Say.text("Order of the plans"));
    order.setMaxWidth(Double.MAX_VALUE);
    order.getItems().setAll(PlanOrdering.values());
    order.setConverter(new StringConverter<>() {
      @Override
      public String toString(PlanOrdering ordering) {
        return ordering == null ? "" : ordering.words();
      }

      @Override
      public PlanOrdering fromString(String text) {
        return PlanOrdering.BY_NAME;
      }
    });
    order.valueProperty().bindBidirectional(list.orderProperty());
    setSpacing(6);
    getChildren().addAll(words, order);
  }
}
