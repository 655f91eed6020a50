package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** The ways to save the record of a squared plan, to finish it again and to take its finish back. */
final class SquaredActs extends VBox {
  private Function<String, Optional<Path>> chooser = _ -> Optional.empty();

  SquaredActs(AfterModel after) {
    SquaredModel model = after.squared();
    Button again = new Button(Say.text("Finish again…"));
    again.setId("finish-again");
    again.setOnAction(_ -> after.finishAgain());
    ToggleButton back = new ToggleButton(Say.text("Take back…"));
    back.setId("ask-take-back");
    FieldBox reason =
        new FieldBox(Say.text("Why it is taken back; its yarn is put on the loom again"), Say.text("cut off too early"), model.reasonProperty(),
            new SimpleStringProperty("")).named("back-reason");
    reason.field().setOnAction(_ -> model.takeBack());
    ActButton act = new ActButton(Say.text("Take back the finish"), model::takeBack, model.act().possibleProperty(), model.act().whyNotProperty()).named("take-back-finish");
    VBox taking = new VBox(reason, act, Labels.fault(model.refusalProperty()));
    taking.getStyleClass().add("plan-section");
    Labels.showOnly(taking, back.selectedProperty());
    back.selectedProperty().subscribe(now -> {
      if (now) {
        reason.field().requestFocus();
      }
    });
    model.seenProperty().subscribe(seen -> back.setSelected(back.isSelected() && seen.isPresent()));
    Button save = new Button(Say.text("Save its record…"));
    save.setId("save-record");
    save.setOnAction(_ -> model.recordName().flatMap(chooser).ifPresent(model::saveRecord));
    HBox line = new HBox(save, again, back);
    line.getStyleClass().add("reason-line");
    getStyleClass().add("plan-acts");
    setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(line, taking);
  }
  /** @param asks the user for a file, beginning with a name for it */
  void offer(Function<String, Optional<Path>> asks) {
    chooser = asks;
  }

  /** Asks for a file that is to become a page to print. */
  static Function<String, Optional<Path>> fileChooser(Node owner) {
    return name -> {
      FileChooser chooser = new FileChooser();
      chooser.setTitle(Say.text("Save the record"));
      chooser.setInitialFileName(name);
      chooser.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(Say.text("Page to print (PDF)"), "*.pdf"));
      return Optional.ofNullable(chooser.showSaveDialog(owner.getScene().getWindow())).map(File::toPath);
    };
  }
}
