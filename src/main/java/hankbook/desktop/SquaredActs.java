package hankbook.desktop;

import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The ways to finish a plan again and to take its finish back. */
final class SquaredActs extends VBox {
  SquaredActs(AfterModel after) {
    SquaredModel model = after.squared();
    Button again = new Button("Finish again…");
    again.setId("finish-again");
    again.setOnAction(_ -> after.finishAgain());
    ToggleButton back = new ToggleButton("Take back…");
    back.setId("ask-take-back");
    FieldBox reason =
        new FieldBox("Why it is taken back; its yarn is put on the loom again", "cut off too early", model.reasonProperty(), new SimpleStringProperty("")).named("back-reason");
    reason.field().setOnAction(_ -> model.takeBack());
    ActButton act = new ActButton("Take back the finish", model::takeBack, model.act().possibleProperty(), model.act().whyNotProperty()).named("take-back-finish");
    VBox taking = new VBox(reason, act, Labels.fault(model.refusalProperty()));
    taking.getStyleClass().add("plan-section");
    Labels.showOnly(taking, back.selectedProperty());
    back.selectedProperty().subscribe(now -> {
      if (now) {
        reason.field().requestFocus();
      }
    });
    model.seenProperty().subscribe(seen -> back.setSelected(back.isSelected() && seen.isPresent()));
    HBox line = new HBox(again, back);
    line.getStyleClass().add("reason-line");
    getStyleClass().add("plan-acts");
    setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(line, taking);
  }
}
