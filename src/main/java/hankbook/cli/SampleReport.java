package hankbook.cli;

import hankbook.studio.SampleStudio;
import java.io.PrintWriter;

/** What {@code check} says of the sample plans, for a start without a command. */
public final class SampleReport {
  private SampleReport() {}

  /**
   * Prints it.
   *
   * @param whyNot a sentence on why there is no window
   */
  public static void print(PrintWriter out, String whyNot) {
    out.println(whyNot + " This is what check says of the sample studio's plans; --help lists the commands.");
    SampleStudio.checks()
        .forEach(
            check -> {
              out.println();
              out.println(CheckReport.of(check));
            });
  }
}
