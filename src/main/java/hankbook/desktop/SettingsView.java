package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.plan.WorkKind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What checks and costs go by, in groups, one under the other. */
public final class SettingsView extends BorderPane {
  private static final Set<Setting> BY_WORK =
      Arrays.stream(WorkKind.values()).flatMap(kind -> Stream.of(Setting.rate(kind), Setting.time(kind))).collect(Collectors.toUnmodifiableSet());

  private final SettingsModel model;
  private final SettingCard first;

  public SettingsView(SettingsModel model) {
    this.model = model;
    getStyleClass().add("screen");
    VBox top = new VBox(
        Labels.title("Settings"),
        Labels.quiet("By these every plan is judged and costed, for all who share this ledger. What you type is kept when you leave the field; empty it to let the default hold."));
    top.getStyleClass().add("gear-top");
    first = new SettingCard(model.rows().getFirst(), model);
    VBox all = new VBox();
    for (SettingGroup group : SettingGroup.values()) {
      all.getChildren().add(group(group));
    }
    all.getStyleClass().add("settings");
    ScrollPane scroll = new ScrollPane(all);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    setTop(top);
    setCenter(scroll);
  }

  private VBox group(SettingGroup group) {
    Label name = Labels.heading(group.words());
    name.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(name, Labels.quiet(group.about()));
    head.getStyleClass().add("settings-head");
    VBox settings = new VBox(head);
    settings.setId("settings-" + group.name().toLowerCase(Locale.ROOT));
    settings.getStyleClass().add("settings-group");
    List<SettingRow> rows = model.rows().stream().filter(row -> SettingGroup.of(row.setting()) == group && !BY_WORK.contains(row.setting())).toList();
    rows.forEach(row -> settings.getChildren().add(row == model.rows().getFirst() ? first : new SettingCard(row, model)));
    if (group == SettingGroup.WORK) {
      settings.getChildren().add(new SettingsByWork(model, model::row));
    }
    return settings;
  }

  /** Puts the keyboard into the first number; before the first pulse it would not be in the scene yet. */
  public void search() {
    applyCss();
    first.field().requestFocus();
  }
}
