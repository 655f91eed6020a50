package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.plan.WorkKind;
import java.util.Locale;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** How long each kind of work takes, and its own rate where it has one: folded away, since few need it. */
final class SettingsByWork extends TitledPane {
  SettingsByWork(SettingsModel model, Function<Setting, SettingRow> rows) {
    setId("settings-by-work");
    setText("By kind of work: how long it takes, and its own rate");
    setExpanded(false);
    setAnimated(false);
    GridPane grid = new GridPane();
    grid.getStyleClass().add("settings-by-work");
    grid.addRow(0, new Label(), Labels.quiet("Time for one"), Labels.quiet("Cost of an hour"));
    for (WorkKind kind : WorkKind.values()) {
      grid.addRow(grid.getRowCount(), new Label(name(kind)), SettingField.of(rows.apply(Setting.time(kind)), model), SettingField.of(rows.apply(Setting.rate(kind)), model));
    }
    VBox all = new VBox(
        Labels.quiet("Times as you would write them: 45 s, 2 min, 1 h 30 min. Where you have set none, times of plans that were finished take its place."
            + " A kind without a rate costs what every hour does. Empty a field to let the default hold again."), grid);
    all.getStyleClass().add("settings-by-work-body");
    setContent(all);
  }

  private static String name(WorkKind kind) {
    String key = kind.key();
    String one = switch (kind.per()) {
      case END -> "an end";
      case PICK -> "a pick";
      case PIECE -> "a piece";
    };
    return key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1) + " " + one;
  }
}
