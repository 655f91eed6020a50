package hankbook.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.LogManager;

/** Another program that opens a ledger, says so, and holds it until its input ends; its libraries speak as the program's do. */
final class OtherProgram {
  static final String OPEN = "open";

  private OtherProgram() {}

  public static void main(String[] args) throws Exception {
    quietLibraries();
    try (Store store = Store.open(LedgerAddress.parse(args[0]))) {
      Examples.chain(store);
      System.out.println(OPEN);
      System.in.readAllBytes();
    }
  }

  static void quietLibraries() throws IOException {
    try (InputStream settings = OtherProgram.class.getResourceAsStream("/hankbook/logging.properties")) {
      LogManager.getLogManager().readConfiguration(settings);
    }
  }

  /** Starts the main method of a class in a process of its own, small and soon ready. */
  static Process start(Class<?> main, String... args) throws IOException {
    return start(List.of(), System.getProperty("java.class.path"), main, args);
  }

  static Process start(List<String> options, String classPath, Class<?> main, String... args) throws IOException {
    List<String> command = new ArrayList<>(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx96m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(options);
    command.addAll(List.of("-classpath", classPath, main.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).start();
  }
}
