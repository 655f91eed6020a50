package hankbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.LogManager;

/** Keeps the libraries' own talk off the screen: they speak only when something is wrong. */
final class Quiet {
  private Quiet() {}

  static void logs() {
    System.setProperty("org.jooq.no-logo", "true");
    System.setProperty("org.jooq.no-tips", "true");
    try (InputStream settings = Quiet.class.getResourceAsStream("logging.properties")) {
      LogManager.getLogManager().readConfiguration(settings);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
