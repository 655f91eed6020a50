package hankbook;

import hankbook.cli.CommandLineProgram;
import hankbook.cli.SampleReport;
import hankbook.desktop.DesktopProgram;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Starts Hankbook: the desktop, or with any argument a command. */
public final class Main {
  private Main() {}

  /** Opens the window until it is closed, or runs the command, and leaves with the exit code. */
  public static void main(String[] args) {
    Quiet.logs();
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    if (args.length == 0) {
      Optional<String> whyNot = DesktopProgram.start("", System.getProperty("user.name", ""));
      whyNot.ifPresent(why -> SampleReport.print(out, why));
      System.exit(0);
    }
    System.exit(CommandLineProgram.run(args, out, err, DesktopProgram::start));
  }
}
