package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.measure.Arithmetic;
import hankbook.measure.Unreadable;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;

/** A count to type, or to make one more or one fewer by button or arrow key; at least 1. */
final class CountField extends HBox {
  private static final double WIDTH = 52;

  private final StringProperty text;

  CountField(String name, String id, StringProperty text) {
    this.text = text;
    getStyleClass().add("count-field");
    TextField field = new TextField();
    field.setId(id);
    field.setPrefWidth(WIDTH);
    field.setAccessibleText(name);
    field.textProperty().bindBidirectional(text);
    field.addEventFilter(KeyEvent.KEY_PRESSED, key -> {
      if (key.getCode() == KeyCode.UP || key.getCode() == KeyCode.DOWN) {
        key.consume();
        step(key.getCode() == KeyCode.UP ? 1 : -1);
      }
    });
    Label caption = new Label(name);
    caption.setLabelFor(field);
    caption.getStyleClass().add(Styles.TEXT_MUTED);
    getChildren().addAll(caption, button("−", Say.text("One fewer: {0}", name), id + "-fewer", -1), field, button("+", Say.text("One more: {0}", name), id + "-more", 1));
  }

  /** What Enter does in it. */
  CountField entering(Runnable doing) {
    ((TextField) getChildren().get(2)).setOnAction(_ -> doing.run());
    return this;
  }

  private Button button(String sign, String words, String id, int by) {
    Button button = new Button(sign);
    button.setId(id);
    button.setAccessibleText(words);
    button.getStyleClass().addAll(Styles.SMALL, Styles.FLAT);
    button.setOnAction(_ -> step(by));
    return button;
  }

  /** A text that is no count is left as it is. */
  private void step(int by) {
    try {
      text.set(Integer.toString(Math.max(1, Arithmetic.count(text.get()) + by)));
    } catch (Unreadable noCount) {
      return;
    }
  }
}
