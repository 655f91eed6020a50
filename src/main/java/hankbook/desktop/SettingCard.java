package hankbook.desktop;

import hankbook.allot.Setting;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One setting: what its number does, the number, its range, and the way back to the default. */
final class SettingCard extends HBox {
  private final FieldBox box;

  SettingCard(SettingRow row, SettingsModel model) {
    Setting setting = row.setting();
    box = SettingField.of(row, model);
    Button back = new Button(SettingRow.isBlank(setting, setting.standard()) ? "Set nothing" : "Back to the default, " + setting.standard());
    back.setId("back-" + SettingField.key(setting));
    back.getStyleClass().addAll("flat", "small");
    back.setOnAction(_ -> model.back(row));
    Labels.showOnly(back, row.standardProperty().map(standard -> !standard));
    VBox words = new VBox(Labels.heading(SettingWords.name(setting)), Labels.quiet(SettingWords.what(setting)), Labels.quiet(SettingWords.range(setting)));
    HBox.setHgrow(words, Priority.ALWAYS);
    VBox number = new VBox(box, back);
    number.getStyleClass().add("setting-number");
    getStyleClass().add("setting-card");
    getChildren().addAll(words, number);
  }

  TextField field() {
    return box.field();
  }
}
