package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.desktop.say.Say;
import hankbook.plan.WorkKind;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** How long each kind of work takes, and its own rate where it has one: folded away, since few need it. */
final class SettingsByWork extends TitledPane {
  SettingsByWork(SettingsModel model, Function<Setting, SettingRow> rows) {
    setId("settings-by-work");
    setText(Say.text("By kind of work: how long it takes, and its own rate"));
    setExpanded(false);
    setAnimated(false);
    GridPane grid = new GridPane();
    grid.getStyleClass().add("settings-by-work");
    grid.addRow(0, new Label(), Labels.quiet(Say.text("Time for one")), Labels.quiet(Say.text("Cost of an hour")));
    for (WorkKind kind : WorkKind.values()) {
      grid.addRow(grid.getRowCount(), new Label(name(kind)), SettingField.of(rows.apply(Setting.time(kind)), model), SettingField.of(rows.apply(Setting.rate(kind)), model));
    }
    VBox all = new VBox(
        Labels.quiet(Say.text("Times as you would write them: 45 s, 2 min, 1 h 30 min. Where you have set none, times of plans that were finished take its place."
            + " A kind without a rate costs what every hour does. Empty a field to let the default hold again.")), grid);
    all.getStyleClass().add("settings-by-work-body");
    setContent(all);
  }

  private static String name(WorkKind kind) {
    return switch (kind) {
      case WINDING -> Say.text("Winding an end");
      case BEAMING -> Say.text("Beaming an end");
      case THREADING -> Say.text("Threading an end");
      case SLEYING -> Say.text("Sleying an end");
      case WEAVING -> Say.text("Weaving a pick");
      case FINISHING -> Say.text("Finishing a piece");
    };
  }
}
