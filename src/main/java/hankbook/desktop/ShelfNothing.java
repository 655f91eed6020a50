package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What stands in place of skeins where there are none: why, and what to do. */
final class ShelfNothing extends VBox {
  ShelfNothing(ShelfModel model, Runnable waysIn, Runnable receive) {
    getStyleClass().add("nothing-yet");
    Label why = Labels.title("");
    why.getStyleClass().setAll("nothing-why");
    why.setId("shelf-nothing");
    why.textProperty().bind(model.nothingProperty());
    Label teach = Labels.quiet(model.nothingProperty().map(_ -> model.isBlank()
        ? Say.text("Each skein, cone or ball stands here with what it holds and what of that is free. Receive the first one, or begin with a file of your stock.")
        : ShelfAsking.help()));
    Button all = button("shelf-all", Say.text("Show the whole shelf"), () -> model.searchProperty().set(""));
    Button first = button("receive-first", Say.text("Receive a skein"), receive);
    Button ways = button("ways-in", Say.text("Ways to begin"), waysIn);
    Labels.showOnly(all, model.nothingProperty().map(_ -> !model.isBlank()));
    Labels.showOnly(first, model.nothingProperty().map(_ -> model.isBlank()));
    Labels.showOnly(ways, model.nothingProperty().map(_ -> model.isBlank()));
    Labels.showOnly(this, model.nothingProperty().map(text -> !text.isEmpty()));
    getChildren().addAll(why, teach, first, ways, all);
  }

  private static Button button(String id, String act, Runnable doing) {
    Button button = new Button(act);
    button.setId(id);
    button.setOnAction(_ -> doing.run());
    return button;
  }
}
