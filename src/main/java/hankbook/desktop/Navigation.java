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
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The narrow way from screen to screen at the left of the window. */
final class Navigation extends VBox {
  private final Label brandName = new Label("Hankbook");
  private final ToggleGroup group = new ToggleGroup();
  private final Map<Screen, ToggleButton> buttons = new LinkedHashMap<>();

  Navigation(List<Screen> screens, Consumer<Screen> go, Runnable find, Runnable otherTheme, Runnable guide, Runnable keys) {
    getStyleClass().add("navigation");
    getChildren().addAll(brand(), find(find));
    screens.forEach(screen -> getChildren().add(button(screen, go)));
    VBox room = new VBox();
    VBox.setVgrow(room, Priority.ALWAYS);
    getChildren().addAll(room, below(Say.text("Theme"), "theme-mark", Chord.OTHER_THEME, otherTheme, "other-theme"));
    getChildren().add(below(Say.text("Guide"), "guide-mark", Chord.GUIDE, guide, "show-guide"));
    getChildren().add(below(Say.text("Keys"), "keys-mark", Chord.KEYS, keys, "show-keys"));
  }

  /** Shows the marks alone where the window is narrow; the words stand in the tips then. */
  void narrow(boolean now) {
    getStyleClass().remove("narrow");
    if (now) {
      getStyleClass().add("narrow");
    }
    brandName.setVisible(!now);
    brandName.setManaged(!now);
  }

  private static Button below(String words, String mark, Chord chord, Runnable act, String id) {
    Button button = new Button(words, mark(mark));
    button.setId(id);
    button.setAccessibleText(words);
    button.getStyleClass().add("flat");
    button.setTooltip(chord.tip(chord.does()));
    button.setOnAction(_ -> act.run());
    return button;
  }

  private static Button find(Runnable find) {
    Button button = new Button(Say.text("Find"), mark("find-mark"));
    button.setId("open-find");
    button.getStyleClass().add("find-button");
    button.setMaxWidth(Double.MAX_VALUE);
    button.setAccessibleText(Say.text("Find anything"));
    button.setTooltip(Chord.FIND_ANYTHING.tip(Chord.FIND_ANYTHING.does()));
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
    button.setAccessibleText(screen.name());
    button.setTooltip(screen.chord().tip(screen.name()));
    button.setOnAction(event -> {
      button.setSelected(true);
      go.accept(screen);
    });
    buttons.put(screen, button);
    return button;
  }

  private HBox brand() {
    Label name = brandName;
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
