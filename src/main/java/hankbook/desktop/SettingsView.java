package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.desktop.say.Say;
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
  private final YouGroup you;

  /** @param you how whoever sits before the window likes it */
  SettingsView(SettingsModel model, YouGroup you) {
    this.model = model;
    this.you = you;
    getStyleClass().add("screen");
    VBox top = new VBox(
        Labels.title(Say.text("Settings")),
        Labels.quiet(Say.text("What you type is kept when you leave the field; empty it to let the default hold.")));
    top.getStyleClass().add("gear-top");
    VBox all = new VBox(
        you,
        Labels.quiet(Say.text("By all that follows every plan is judged, begun and costed, for all who share this ledger.")));
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
    rows.forEach(row -> settings.getChildren().add(new SettingCard(row, model)));
    if (group == SettingGroup.WORK) {
      settings.getChildren().add(new SettingsByWork(model, model::row));
    }
    return settings;
  }

  /** Puts the keyboard where the choices begin; before the first pulse it would not be in the scene yet. */
  public void search() {
    applyCss();
    you.first().requestFocus();
  }
}
