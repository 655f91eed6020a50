package hankbook.desktop;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.net.URL;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.scene.Scene;

/** The two looks of the window: the same rules over two sets of colours. */
public enum Theme {
  LIGHT("light.css"),
  DARK("dark.css");

  private static final String KEY = "theme";

  private final String colours;

  Theme(String colours) {
    this.colours = colours;
  }

  /** Puts the look on a scene. */
  public void on(Scene scene) {
    Application.setUserAgentStylesheet(this == LIGHT ? new PrimerLight().getUserAgentStylesheet() : new PrimerDark().getUserAgentStylesheet());
    Stream<String> size = scene.getStylesheets().stream().filter(Enlarged::isOwn);
    scene.getStylesheets().setAll(Stream.concat(Stream.of(sheet("hankbook.css"), sheet(colours)), size).toList());
  }

  /** The other one. */
  Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  /** The one that was left on; light at first. */
  static Theme in(Remembered remembered) {
    return remembered.get(KEY, Theme.class).orElse(LIGHT);
  }

  /** Lets it be the one that was left on. */
  void remember(Remembered remembered) {
    remembered.put(KEY, this);
  }

  private static String sheet(String name) {
    URL found = Theme.class.getResource(name);
    return Objects.requireNonNull(found, () -> "the style sheet " + name + " is missing from the program").toExternalForm();
  }
}
