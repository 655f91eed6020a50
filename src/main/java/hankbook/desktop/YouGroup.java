package hankbook.desktop;

import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.desktop.units.Units;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How whoever sits before the window likes it: language, units, size, and light or dark. */
final class YouGroup extends VBox {
  /** Units as they go together, or each chosen apart. */
  private enum Sort {
    METRIC,
    IMPERIAL,
    MIXED
  }

  private final GridPane grid = new GridPane();
  private InvalidationListener sheets = _ -> {};
  private final Choice<Language> language;
  private final Choice<Sort> sort;
  private final UnitChoices apart;
  private final YouModel model;

  YouGroup(YouModel model, Remembered remembered) {
    this.model = model;
    getStyleClass().add("settings-group");
    setId("settings-you");
    Label name = Labels.heading(Say.text("You"));
    name.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(name, Labels.quiet(Say.text("How you like this window. It is remembered on this machine and changes nothing in the ledger.")));
    head.getStyleClass().add("settings-head");
    language = new Choice<>(Say.text("Language"), "your-language", List.of(Language.values()), Language::ownName, model::speak);
    apart = new UnitChoices(model, remembered);
    sort = new Choice<>(Say.text("Units"), "your-units", List.of(Sort.values()), YouGroup::words, chosen -> {
      units(chosen).ifPresentOrElse(model::measure, () -> apart.setExpanded(true));
    });
    showHeld();
    grid.getStyleClass().add("your-grid");
    row(Say.text("Language"), language);
    row(Say.text("Units"), sort);
    row(Say.text("Light or dark"), theme(remembered));
    VBox card = new VBox(grid, apart);
    card.getStyleClass().addAll("setting-card", "your-card");
    getChildren().addAll(head, card);
  }

  /** Shows how the window speaks, whatever was chosen. */
  void showHeld() {
    language.show(model.language());
    sort.show(sort(model.units()));
    apart.showHeld();
  }

  /** Offers how large everything is shown. */
  void offer(Enlargement enlargement) {
    Choice<Integer> size = new Choice<>(Say.text("Size of everything"), "your-size", Enlargement.STEPS, percent -> Say.text("{0} %", percent), enlargement::set);
    enlargement.percentProperty().subscribe(percent -> size.show(percent.intValue()));
    row(Say.text("Size of everything"), size);
  }

  /** Keys change the theme as well; it is then told by its style sheets. */
  private Choice<Theme> theme(Remembered remembered) {
    Choice<Theme> theme = new Choice<>(Say.text("Light or dark"), "your-theme", List.of(Theme.values()), YouGroup::words, chosen -> {
      chosen.remember(remembered);
      chosen.on(getScene());
    });
    theme.show(Theme.in(remembered));
    sheets = _ -> Platform.runLater(() -> theme.show(Theme.in(remembered)));
    WeakInvalidationListener once = new WeakInvalidationListener(sheets);
    sceneProperty().subscribe((before, now) -> {
      Optional.ofNullable(before).ifPresent(scene -> scene.getStylesheets().removeListener(once));
      Optional.ofNullable(now).ifPresent(scene -> scene.getStylesheets().addListener(once));
    });
    return theme;
  }

  private static String words(Theme theme) {
    return switch (theme) {
      case LIGHT -> Say.text("Light");
      case DARK -> Say.text("Dark");
    };
  }

  private void row(String name, Region control) {
    Label label = new Label(name);
    label.setLabelFor(control);
    label.setWrapText(true);
    control.setPrefWidth(220);
    grid.addRow(grid.getRowCount(), label, control);
  }

  /** Where the keyboard begins. */
  Node first() {
    return language;
  }

  private static Sort sort(Units units) {
    return units.equals(Units.METRIC) ? Sort.METRIC : units.equals(Units.IMPERIAL) ? Sort.IMPERIAL : Sort.MIXED;
  }

  private static Optional<Units> units(Sort sort) {
    return switch (sort) {
      case METRIC -> Optional.of(Units.METRIC);
      case IMPERIAL -> Optional.of(Units.IMPERIAL);
      case MIXED -> Optional.empty();
    };
  }

  private static String words(Sort sort) {
    return switch (sort) {
      case METRIC -> Say.text("Metric");
      case IMPERIAL -> Say.text("Imperial");
      case MIXED -> Say.text("Mixed");
    };
  }
}
