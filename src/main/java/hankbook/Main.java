package hankbook;

import hankbook.cli.CommandLineProgram;
import hankbook.cli.SampleReport;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;

/** Starts Hankbook: any argument is part of a command. */
public final class Main {
  private Main() {}

  /** Runs the command and leaves with its exit code. */
  public static void main(String[] args) throws IOException {
    quietLibraries();
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    if (args.length == 0) {
      SampleReport.print(out);
    } else {
      System.exit(CommandLineProgram.run(args, out, err));
    }
  }

  /** Unless it is told otherwise, the program's libraries speak only when something is wrong. */
  private static void quietLibraries() throws IOException {
    if (System.getProperty("java.util.logging.config.file") == null) {
      try (InputStream settings = Main.class.getResourceAsStream("logging.properties")) {
        LogManager.getLogManager().readConfiguration(settings);
      }
    }
  }
}
