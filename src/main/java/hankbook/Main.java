package hankbook;

import hankbook.cli.CommandLineProgram;
import hankbook.cli.SampleReport;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Starts Hankbook: any argument is part of a command. */
public final class Main {
  private Main() {}

  /** Runs the command and leaves with its exit code. */
  public static void main(String[] args) {
    Quiet.logs();
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    if (args.length == 0) {
      SampleReport.print(out);
    } else {
      System.exit(CommandLineProgram.run(args, out, err));
    }
  }
}
