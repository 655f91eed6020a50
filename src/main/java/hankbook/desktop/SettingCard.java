package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.cost.ValueMethod;
import hankbook.desktop.say.Say;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One setting: what its number does, the number, its range, and the way back to the default. */
final class SettingCard extends HBox {
  private final Control control;

  SettingCard(SettingRow row, SettingsModel model) {
    Setting setting = row.setting();
    Button back = new Button(
        SettingRow.isBlank(setting, setting.standard()) ? Say.text("Set nothing") : Say.text("Back to the default, {0}", SettingWords.said(setting, setting.standard())));
    back.setId("back-" + SettingField.key(setting));
    back.getStyleClass().addAll("flat", "small");
    back.setWrapText(true);
    back.setOnAction(_ -> model.back(row));
    Labels.showOnly(back, row.standardProperty().map(standard -> !standard));
    VBox words = new VBox(Labels.heading(SettingWords.name(setting)), Labels.quiet(SettingWords.what(setting)), Labels.quiet(SettingWords.range(setting)));
    HBox.setHgrow(words, Priority.ALWAYS);
    VBox number = new VBox();
    if (setting.isChoice()) {
      Choice<ValueMethod> choice = valueMethod(row, model);
      control = choice;
      number.getChildren().addAll(choice, Labels.fault(row.messageProperty()), back);
    } else {
      FieldBox box = SettingField.of(row, model);
      control = box.field();
      number.getChildren().addAll(box, back);
    }
    number.getStyleClass().add("setting-number");
    getStyleClass().add("setting-card");
    getChildren().addAll(words, number);
  }

  private static Choice<ValueMethod> valueMethod(SettingRow row, SettingsModel model) {
    Setting setting = row.setting();
    Choice<ValueMethod> choice = new Choice<>(
        SettingWords.name(setting), "set-" + SettingField.key(setting), List.of(ValueMethod.values()), ValueMethodWords::name, chosen -> {
          row.textProperty().set(chosen.key());
          model.set(row);
        });
    row.textProperty().subscribe(text -> choice.show(ValueMethod.parse(text.isBlank() ? setting.standard() : text)));
    return choice;
  }

  Control field() {
    return control;
  }
}
