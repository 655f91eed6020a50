package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** What the window shows where the ledger cannot be opened: why, and a way to try again. */
final class ClosedBook extends VBox {
  ClosedBook(String why, Runnable again) {
    getStyleClass().addAll("screen", "welcome");
    Button trying = new Button(Say.text("Try again"));
    trying.setId("try-again");
    trying.getStyleClass().add("accent");
    trying.setOnAction(event -> again.run());
    getChildren().addAll(Labels.title(Say.text("The ledger cannot be opened")), Labels.quiet(why), trying);
  }
}
