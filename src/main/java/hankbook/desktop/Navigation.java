package hankbook.desktop;

import hankbook.desktop.say.Say;
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

  Navigation(List<Screen> screens, Consumer<Screen> go, Runnable find, Runnable otherTheme) {
    getStyleClass().add("navigation");
    getChildren().addAll(brand(), find(find));
    screens.forEach(screen -> getChildren().add(button(screen, go)));
    VBox room = new VBox();
    VBox.setVgrow(room, Priority.ALWAYS);
    Button theme = new Button(Say.text("Theme"), mark("theme-mark"));
    theme.setId("other-theme");
    theme.getStyleClass().add("flat");
    theme.setTooltip(new Tooltip(Say.text("Change between light and dark, {0}", Chord.OTHER_THEME.words())));
    theme.setOnAction(event -> otherTheme.run());
    getChildren().addAll(room, theme);
  }

  private static Button find(Runnable find) {
    Button button = new Button(Say.text("Find anything"), mark("find-mark"));
    button.setId("open-find");
    button.getStyleClass().add("find-button");
    button.setMaxWidth(Double.MAX_VALUE);
    button.setWrapText(true);
    button.setTooltip(new Tooltip(Say.text("Find a skein, a plan, a screen or something to do, {0}", Chord.FIND_ANYTHING.words())));
    button.setOnAction(_ -> find.run());
    return button;
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
    button.setId("go-" + screen.chord().name().toLowerCase(Locale.ROOT));
    button.setToggleGroup(group);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setTooltip(new Tooltip(Say.text("{0}, {1}", screen.name(), screen.chord().words())));
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
