package hankbook.desktop;

import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** One colour of a draft on one of its sides, and the yarn for it. */
final class DraftColourRow extends HBox {
  private static final double SWATCH = 24;

  DraftColourRow(DraftChoice choice) {
    getStyleClass().add("draft-colour");
    Swatch wanted = new Swatch(SWATCH, SWATCH);
    wanted.show(choice.use().colour().hex(), choice.use().colour().toString());
    Label what = new Label(choice.mark() + ", " + DraftWords.threads(choice));
    what.setMinWidth(130);
    Swatch offered = new Swatch(SWATCH, SWATCH);
    Label difference = Labels.quiet("");
    difference.setMinWidth(112);
    choice.yarnProperty().subscribe(yarn -> {
      offered.show(yarn.hex(), yarn.yarn().toString());
      difference.setText(yarn.difference());
    });
    ComboBox<DraftYarn> yarns = yarns(choice);
    HBox.setHgrow(yarns, Priority.ALWAYS);
    getChildren().addAll(wanted, what, offered, yarns, difference, take(choice));
  }

  private static ComboBox<DraftYarn> yarns(DraftChoice choice) {
    ComboBox<DraftYarn> yarns = new ComboBox<>();
    yarns.getItems().setAll(choice.yarns());
    yarns.setValue(choice.yarnProperty().get());
    yarns.setMaxWidth(Double.MAX_VALUE);
    yarns.setPrefWidth(200);
    yarns.setMinWidth(0);
    yarns.setAccessibleText("Yarn for " + choice.mark() + " in the " + DraftWords.threads(choice));
    yarns.setId("draft-" + choice.use().role().name().toLowerCase(Locale.ROOT) + "-" + choice.mark());
    yarns.setOnAction(_ -> {
      if (yarns.getValue() != null) {
        choice.choose(yarns.getValue());
      }
    });
    return yarns;
  }

  /** A proposal is told by its word and its frame, and is taken here. */
  private static HBox take(DraftChoice choice) {
    Label state = new Label();
    state.setMinWidth(62);
    state.getStyleClass().add("draft-state");
    Button take = new Button("Take");
    take.setMinWidth(USE_PREF_SIZE);
    take.setOnAction(_ -> choice.take());
    choice.takenProperty().subscribe(taken -> {
      state.setText(taken ? "taken" : "proposed");
      state.getStyleClass().setAll("label", "draft-state", taken ? "draft-taken" : "draft-proposed");
      take.setDisable(taken);
    });
    HBox box = new HBox(6, state, take);
    box.getStyleClass().add("reason-line");
    return box;
  }
}
