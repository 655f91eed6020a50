package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;

/** All keys at a glance, in the place of a screen. */
final class KeysPage extends BorderPane {
  private final Button close = new Button(Say.text("Close"));
  private final GridPane grid = new GridPane();

  /** @param back turns to the screen that was shown */
  KeysPage(Runnable back) {
    getStyleClass().add("screen");
    setId("keys-page");
    close.setId("close-keys");
    close.setOnAction(_ -> back.run());
    HBox top = new HBox(Labels.title(Say.text("Keys")), Labels.gap(), close);
    top.getStyleClass().add("screen-top");
    grid.getStyleClass().add("keys");
    part(Say.text("Everywhere"));
    for (Chord chord : Chord.values()) {
      row(chord.words(), chord.does());
    }
    part(Say.text("On a page"));
    row(Say.text("Tab, Shift+Tab"), Say.text("On to the next field or button, back to the one before"));
    row(Say.text("Space or Enter"), Say.text("Do what the button says"));
    row(Say.text("Arrows, Home, End"), Say.text("Through a table, a list or a row of choices"));
    row(Say.text("Esc"), Say.text("Close a list, a tip or this page"));
    ScrollPane scroll = new ScrollPane(grid);
    scroll.setFitToWidth(true);
    setTop(top);
    setCenter(scroll);
    addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ESCAPE) {
        back.run();
      }
    });
  }

  /** Puts the keyboard on the way back. */
  void begin() {
    applyCss();
    close.requestFocus();
  }

  private void part(String name) {
    grid.add(Labels.heading(name), 0, grid.getRowCount(), 2, 1);
  }

  private void row(String keys, String does) {
    Label key = new Label(keys);
    key.getStyleClass().add("key");
    key.setMinWidth(USE_PREF_SIZE);
    grid.addRow(grid.getRowCount(), key, Labels.quiet(does));
  }
}
