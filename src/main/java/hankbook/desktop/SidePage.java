package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A page beside the table, which its button or Escape closes. */
class SidePage extends VBox {
  private final VBox body = new VBox();
  private final Runnable close;

  SidePage(Runnable close) {
    this.close = close;
    getStyleClass().add("side-page");
    body.getStyleClass().add("side-body");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ESCAPE) {
        close.run();
      }
    });
  }

  /** Fills the part that scrolls. */
  final void fill(Node... parts) {
    body.getChildren().setAll(parts);
  }

  /** What the page is of, with the button that closes it. */
  final HBox heading(Node title) {
    Button closing = new Button(Say.text("Close"));
    closing.getStyleClass().addAll("flat", "small");
    closing.setOnAction(event -> close.run());
    HBox top = new HBox(title, Labels.gap(), closing);
    top.getStyleClass().add("page-top");
    return top;
  }
}
