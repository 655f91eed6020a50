package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A section to try in another form, with what that would change said below. */
final class SectionTry extends VBox {
  SectionTry(SectionTrial trial) {
    getStyleClass().add("section-try");
    ChoiceBox<String> section = new ChoiceBox<>();
    section.getItems().setAll(trial.names());
    section.getSelectionModel().select(trial.chosenProperty().get());
    section.getSelectionModel().selectedIndexProperty().subscribe(index -> trial.chosenProperty().set(Math.max(0, index.intValue())));
    section.setAccessibleText(Say.text("Section to try"));
    section.setId("try-section");
    Label title = new Label(Say.text("What if"));
    title.getStyleClass().add(Styles.TEXT_MUTED);
    Button keep = new Button(Say.text("Keep so"));
    keep.setId("keep-section");
    keep.getStyleClass().addAll(Styles.SMALL, Styles.ACCENT);
    keep.disableProperty().bind(trial.keepableProperty().not());
    keep.accessibleHelpProperty().bind(trial.wordsProperty());
    keep.setOnAction(_ -> trial.keep());
    FlowPane fields = new FlowPane(title, section, new CountField("repeats", "try-repeats", trial.repeatsProperty()), new CountField("units", "try-units", trial.unitsProperty()), keep);
    fields.getStyleClass().add("section-try-fields");
    Label words = new Label();
    words.setId("section-change");
    words.setWrapText(true);
    words.textProperty().bind(trial.wordsProperty());
    getChildren().addAll(fields, words);
  }
}
