package hankbook.desktop;

import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** What checks judge by, one under the other. */
public final class SettingsView extends BorderPane {
  private final List<SettingCard> cards;

  public SettingsView(SettingsModel model) {
    cards = model.rows().stream().map(row -> new SettingCard(row, model)).toList();
    getStyleClass().add("screen");
    VBox top = new VBox(
        Labels.title("Settings"), Labels.quiet("By these every plan is judged, for all who share this ledger. What you type is kept when you leave the field."));
    top.getStyleClass().add("gear-top");
    VBox all = new VBox();
    all.getChildren().setAll(cards);
    all.getStyleClass().add("settings");
    ScrollPane scroll = new ScrollPane(all);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    setTop(top);
    setCenter(scroll);
  }

  /** Puts the keyboard into the first number; before the first pulse it would not be in the scene yet. */
  public void search() {
    applyCss();
    cards.getFirst().field().requestFocus();
  }
}
