package hankbook.desktop;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import javafx.scene.TraversalDirection;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** A note on what was found, over more lines than one; the tabulator leads on, as from every other field. */
final class FoundNote extends VBox {
  private final String key;
  private final TextArea area = new TextArea();

  FoundNote(AfterEditor editor, String key, String caption, String prompt, int rows) {
    this.key = key;
    getStyleClass().add("field-box");
    Label label = new Label(caption);
    label.getStyleClass().add("field-name");
    label.setLabelFor(area);
    label.setWrapText(true);
    area.setId("found-" + key);
    area.setPromptText(prompt);
    area.setAccessibleText(caption);
    area.setPrefRowCount(rows);
    area.setWrapText(true);
    area.setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(label, area);
    editor.draftProperty().subscribe(this::show);
    area.textProperty().subscribe(text -> editor.enter(editor.draftProperty().get().with(ActualsPart.ACTUALS, 1, key, text)));
    area.focusedProperty().subscribe(focused -> {
      if (!focused) {
        editor.keep();
      }
    });
    area.addEventFilter(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.TAB && !pressed.isControlDown()) {
        area.requestFocusTraversal(pressed.isShiftDown() ? TraversalDirection.PREVIOUS : TraversalDirection.NEXT);
        pressed.consume();
      }
    });
  }

  private void show(ActualsDraft draft) {
    String text = draft.text(ActualsPart.ACTUALS, 1, key);
    if (!text.equals(area.getText())) {
      area.setText(text);
    }
  }
}
