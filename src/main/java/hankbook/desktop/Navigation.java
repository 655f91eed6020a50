package hankbook.desktop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The narrow way from screen to screen at the left of the window. */
final class Navigation extends VBox {
  private final ToggleGroup group = new ToggleGroup();
  private final Map<Screen, ToggleButton> buttons = new LinkedHashMap<>();

  Navigation(List<Screen> screens, Consumer<Screen> go, Runnable otherTheme) {
    getStyleClass().add("navigation");
    getChildren().add(brand());
    screens.forEach(screen -> getChildren().add(button(screen, go)));
    VBox room = new VBox();
    VBox.setVgrow(room, Priority.ALWAYS);
    Button theme = new Button("Theme", mark("theme-mark"));
    theme.setId("other-theme");
    theme.getStyleClass().add("flat");
    theme.setTooltip(new Tooltip("Change between light and dark, " + Chord.OTHER_THEME.words()));
    theme.setOnAction(event -> otherTheme.run());
    getChildren().addAll(room, theme);
  }

  /** Marks a screen as the one shown. */
  void mark(Screen screen) {
    ToggleButton button = buttons.get(screen);
    if (button != null) {
      button.setSelected(true);
    }
  }

  /** Marks none, while something else than a screen is shown. */
  void markNone() {
    group.selectToggle(null);
  }

  private ToggleButton button(Screen screen, Consumer<Screen> go) {
    ToggleButton button = new ToggleButton(screen.name(), mark(screen.mark()));
    button.setId("go-" + screen.name().toLowerCase(Locale.ROOT));
    button.setToggleGroup(group);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setTooltip(new Tooltip(screen.name() + ", " + screen.chord().words()));
    button.setOnAction(event -> {
      button.setSelected(true);
      go.accept(screen);
    });
    buttons.put(screen, button);
    return button;
  }

  private static HBox brand() {
    Label name = new Label("Hankbook");
    name.setMinWidth(USE_PREF_SIZE);
    name.getStyleClass().add("brand");
    HBox brand = new HBox(mark("brand-mark"), name);
    brand.getStyleClass().add("brand-line");
    return brand;
  }

  private static Region mark(String style) {
    Region mark = new Region();
    mark.getStyleClass().addAll("drawn", style);
    return mark;
  }
}
