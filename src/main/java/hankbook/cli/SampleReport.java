package hankbook.cli;

import hankbook.studio.SampleStudio;
import java.io.PrintWriter;

/** What {@code check} says of the sample plans, for a start without a command. */
public final class SampleReport {
  private SampleReport() {}

  /** Prints it. */
  public static void print(PrintWriter out) {
    out.println("The desktop is not built yet. This is what check says of the sample studio's plans; --help lists the commands.");
    SampleStudio.checks()
        .forEach(
            check -> {
              out.println();
              out.println(CheckReport.of(check));
            });
  }
}
