package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One colour of a draft on one of its sides, and the yarn for it. */
final class DraftColourRow extends HBox {
  private static final double SWATCH = 24;
  private static final double NAME = 124;
  private static final double STATE = 132;

  DraftColourRow(DraftChoice choice) {
    getStyleClass().add("draft-colour");
    Swatch wanted = new Swatch(SWATCH, SWATCH);
    wanted.show(choice.use().colour().hex(), choice.use().colour().toString());
    Label what = new Label(choice.mark() + ", " + DraftWords.threads(choice));
    what.setMinWidth(NAME);
    Swatch offered = new Swatch(SWATCH, SWATCH);
    ComboBox<DraftYarn> yarns = yarns(choice);
    HBox.setHgrow(yarns, Priority.ALWAYS);
    Button take = new Button(Say.text("Take"));
    take.setMinWidth(USE_PREF_SIZE);
    take.setAccessibleText(Say.text("Take the yarn for {0}", what.getText()));
    take.setOnAction(_ -> choice.take());
    choice.takenProperty().subscribe(take::setDisable);
    choice.yarnProperty().subscribe(yarn -> offered.show(yarn.hex(), yarn.yarn().toString()));
    getChildren().addAll(wanted, what, offered, yarns, state(choice), take);
  }

  /** How far off the yarn's colour looks, and whether it is only proposed: told by its word, and by a frame of dashes. */
  private static VBox state(DraftChoice choice) {
    Label difference = Labels.quiet(choice.yarnProperty().map(DraftYarn::difference));
    Label state = new Label();
    choice.takenProperty().subscribe(taken -> {
      state.setText(taken ? "taken" : "proposed");
      state.getStyleClass().setAll("label", "draft-state", taken ? "draft-taken" : "draft-proposed");
    });
    VBox box = new VBox(2, difference, state);
    box.setMinWidth(STATE);
    box.setPrefWidth(STATE);
    box.setAlignment(Pos.CENTER_LEFT);
    return box;
  }

  private static ComboBox<DraftYarn> yarns(DraftChoice choice) {
    ComboBox<DraftYarn> yarns = new ComboBox<>();
    yarns.getItems().setAll(choice.yarns());
    yarns.setValue(choice.yarnProperty().get());
    yarns.setMaxWidth(Double.MAX_VALUE);
    yarns.setPrefWidth(200);
    yarns.setMinWidth(0);
    yarns.setAccessibleText(Say.text("Yarn for {0} in the {1}", choice.mark(), DraftWords.threads(choice)));
    yarns.setId("draft-" + choice.use().role().name().toLowerCase(Locale.ROOT) + "-" + choice.mark());
    yarns.setOnAction(_ -> {
      if (yarns.getValue() != null) {
        choice.choose(yarns.getValue());
      }
    });
    return yarns;
  }
}
