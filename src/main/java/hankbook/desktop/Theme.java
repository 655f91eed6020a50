package hankbook.desktop;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Scene;

/** The two looks of the window: the same rules over two sets of colours. */
public enum Theme {
  LIGHT("light.css"),
  DARK("dark.css");

  private final String colours;

  Theme(String colours) {
    this.colours = colours;
  }

  /** Puts the look on a scene. */
  public void on(Scene scene) {
    Application.setUserAgentStylesheet(this == LIGHT ? new PrimerLight().getUserAgentStylesheet() : new PrimerDark().getUserAgentStylesheet());
    scene.getStylesheets().setAll(List.of(sheet("hankbook.css"), sheet(colours)));
  }

  /** The other one. */
  Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  private static String sheet(String name) {
    URL found = Theme.class.getResource(name);
    return Objects.requireNonNull(found, () -> "the style sheet " + name + " is missing from the program").toExternalForm();
  }
}
