package hankbook.desktop;

import hankbook.allot.Setting;
import java.util.Locale;
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
    String key = setting.name().toLowerCase(Locale.ROOT).replace('_', '-');
    box = new FieldBox(SettingWords.name(setting), setting.standard(), row.textProperty(), row.messageProperty()).named("set-" + key);
    box.getChildren().removeFirst();
    TextField field = box.field();
    field.setPrefColumnCount(9);
    field.setOnAction(_ -> model.set(row));
    field.focusedProperty().subscribe((_, focused) -> {
      if (!focused) {
        model.set(row);
      }
    });
    Button back = new Button("Back to the default, " + setting.standard());
    back.setId("back-" + key);
    back.getStyleClass().addAll("flat", "small");
    back.setOnAction(_ -> model.back(row));
    Labels.showOnly(back, row.standardProperty().map(standard -> !standard));
    VBox words = new VBox(
        Labels.heading(SettingWords.name(setting)), Labels.quiet(SettingWords.what(setting)),
        Labels.quiet(range(setting) + setting.standard() + " where nothing is set."));
    HBox.setHgrow(words, Priority.ALWAYS);
    VBox number = new VBox(box, back);
    number.getStyleClass().add("setting-number");
    getStyleClass().add("setting-card");
    getChildren().addAll(words, number);
  }

  private static String range(Setting setting) {
    return setting.least().isEmpty() ? "" : "From " + setting.least() + " to " + setting.most() + "; ";
  }

  TextField field() {
    return box.field();
  }
}
