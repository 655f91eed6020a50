package hankbook.desktop.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import net.harawata.appdirs.AppDirsFactory;

/**
 * The window's own log: a few small files that take each other's place, with the program's own faults and what its libraries warn of. Nothing of the ledger is written
 * there but what a message about a fault itself holds. Where it cannot be written, the program goes on without it.
 */
public final class FaultLog implements AutoCloseable {
  private static final int MOST_BYTES = 200_000;
  private static final int FILES = 3;

  /** Held here, since the library itself forgets a logger that nobody holds. */
  private final Logger own = Logger.getLogger("hankbook.desktop");

  private final Path folder;

  /** @param folder where it lies; it need not be there yet */
  public FaultLog(Path folder) {
    this.folder = folder;
    own.setUseParentHandlers(false);
    own.setLevel(Level.INFO);
  }

  /** The log in the folder where this user's programs keep theirs on this machine. */
  public static FaultLog standard() {
    return new FaultLog(Path.of(AppDirsFactory.getInstance().getUserLogDir("hankbook", null, null)));
  }

  /** Where it lies. */
  public Path folder() {
    return folder;
  }

  /** The newest of its files. */
  public Path file() {
    return folder.resolve("hankbook.0.log");
  }

  /** Lets what is said be written from now on; also what libraries warn of. */
  public FaultLog open() {
    try {
      Files.createDirectories(folder);
      FileHandler file = new FileHandler(pattern(), MOST_BYTES, FILES, true);
      file.setFormatter(new SimpleFormatter() {
        @Override
        public String format(java.util.logging.LogRecord said) {
          return said.getInstant() + " " + said.getLevel() + " " + said.getLoggerName() + ": " + formatMessage(said) + System.lineSeparator()
              + (said.getThrown() == null ? "" : FaultReport.trace(said.getThrown()));
        }
      });
      own.addHandler(file);
      Logger.getLogger("").addHandler(file);
    } catch (IOException _) {
      // The program is of use without a log.
    }
    return this;
  }

  /** A percent sign in the path would be read as a pattern. */
  private String pattern() {
    return folder.resolve("hankbook").toString().replace("%", "%%") + ".%g.log";
  }

  /** Writes a fault down with its trace. */
  void write(String where, Throwable fault) {
    own.log(Level.SEVERE, fault, () -> "A fault on the thread " + where + ".");
  }

  @Override
  public void close() {
    for (var handler : own.getHandlers()) {
      own.removeHandler(handler);
      Logger.getLogger("").removeHandler(handler);
      handler.close();
    }
  }
}
