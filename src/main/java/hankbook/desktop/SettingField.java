package hankbook.desktop;

import hankbook.allot.Setting;
import java.util.Locale;
import javafx.scene.control.TextField;

/** The field of a setting: what is typed is set when it is left, or with Enter. */
final class SettingField {
  private SettingField() {}

  static FieldBox of(SettingRow row, SettingsModel model) {
    Setting setting = row.setting();
    FieldBox plain =
        new FieldBox(SettingWords.name(setting), SettingWords.said(setting, setting.standard()), row.textProperty(), row.messageProperty()).named("set-" + key(setting));
    FieldBox box = setting.isQuantity() ? plain.quantity() : plain;
    box.getChildren().removeFirst();
    TextField field = box.field();
    field.setPromptText(SettingWords.said(setting, setting.standard()));
    field.setPrefColumnCount(9);
    field.setOnAction(_ -> model.set(row));
    field.focusedProperty().subscribe((_, focused) -> {
      if (!focused) {
        model.set(row);
      }
    });
    return box;
  }

  /** By which its nodes are found. */
  static String key(Setting setting) {
    return setting.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
