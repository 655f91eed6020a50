package hankbook.desktop.fault;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;

/** A fault as a text to be sent to whoever can mend it: when, on what, and the trace. */
final class FaultReport {
  private FaultReport() {}

  static String of(Instant when, Throwable fault) {
    return String.join(System.lineSeparator(),
        "Hankbook, " + when,
        "Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " " + System.getProperty("os.version"),
        trace(fault));
  }

  static String trace(Throwable fault) {
    StringWriter trace = new StringWriter();
    fault.printStackTrace(new PrintWriter(trace, true));
    return trace.toString();
  }
}
