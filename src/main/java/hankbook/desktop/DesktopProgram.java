package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import javafx.application.Application;
import javafx.application.Platform;

/** Starts the window, or says in one sentence why there can be none. */
public final class DesktopProgram {
  private DesktopProgram() {}

  /**
   * Opens the window and stays until it is closed.
   *
   * @param ledger the ledger's address as text, or empty for the standard one
   * @param author who writes in it
   * @return why no window could be opened, or nothing once it is closed
   */
  public static Optional<String> start(String ledger, String author) {
    Optional<String> why = noDisplay(System.getProperties(), System.getenv()).or(DesktopProgram::noToolkit);
    if (why.isEmpty()) {
      Application.launch(DesktopApplication.class, ledger, author);
    }
    return why;
  }

  /** Why there can be no window, as far as the surroundings tell. */
  static Optional<String> noDisplay(Properties properties, Map<String, String> surroundings) {
    boolean linux = properties.getProperty("os.name", "").startsWith("Linux");
    boolean headless = "Headless".equals(properties.getProperty("glass.platform"));
    boolean display = surroundings.containsKey("DISPLAY") || surroundings.containsKey("WAYLAND_DISPLAY");
    return linux && !headless && !display ? Optional.of(Say.text("There is no display to open a window on.")) : Optional.empty();
  }

  /** The toolkit is started apart from the application, so that only its own failures count as having no window. */
  private static Optional<String> noToolkit() {
    try {
      Platform.startup(() -> {});
      return Optional.empty();
    } catch (RuntimeException | LinkageError failed) {
      return Optional.of(Say.text("No window can be opened here: {0}.", Objects.requireNonNullElse(failed.getMessage(), failed.getClass().getSimpleName())));
    }
  }
}
