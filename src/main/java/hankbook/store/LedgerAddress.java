package hankbook.store;

import hankbook.measure.Unreadable;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import net.harawata.appdirs.AppDirsFactory;
import org.postgresql.ds.PGSimpleDataSource;

/** Where a ledger is kept. */
public sealed interface LedgerAddress {
  /** The address as its owner would give it. */
  String text();

  /** Whether a ledger may be there; a server is asked only when it is opened. */
  boolean isThere();

  /**
   * A file of its own, for one program at a time.
   *
   * @param file where it lies, without the database's own ending
   */
  record InFile(Path file) implements LedgerAddress {
    /** What the database puts behind the name. */
    static final String ENDING = ".mv.db";

    public InFile {
      String name = String.valueOf(file.getFileName());
      file = (name.endsWith(ENDING) ? file.resolveSibling(name.substring(0, name.length() - ENDING.length())) : file).toAbsolutePath().normalize();
    }

    @Override
    public String text() {
      return file + ENDING;
    }

    @Override
    public boolean isThere() {
      return Files.exists(Path.of(text()));
    }
  }

  /**
   * A PostgreSQL server, for many programs at once.
   *
   * @param url as JDBC writes it
   */
  record AtServer(String url) implements LedgerAddress {
    static final String START = "jdbc:postgresql:";

    public AtServer {
      if (!url.startsWith(START)) {
        throw new Unreadable(url.replaceFirst("\\?.*", ""), WANTED);
      }
      try {
        new PGSimpleDataSource().setURL(url);
      } catch (IllegalArgumentException notOne) {
        throw new Unreadable(url.replaceFirst("\\?.*", ""), WANTED);
      }
    }

    /** Without what follows the name of the database, where a password may stand. */
    @Override
    public String text() {
      return url.replaceFirst("\\?.*", "");
    }

    @Override
    public boolean isThere() {
      return true;
    }
  }

  /** What an address may be. */
  String WANTED = "a path, or a PostgreSQL address such as jdbc:postgresql://host/guild";

  /**
   * Reads a path or the address of a PostgreSQL server.
   *
   * @throws Unreadable if it is neither
   */
  static LedgerAddress parse(String text) {
    String address = text.strip();
    if (address.startsWith("jdbc:")) {
      return new AtServer(address);
    }
    try {
      Path path = Path.of(address);
      if (path.getFileName() == null) {
        throw new Unreadable(text, WANTED);
      }
      return new InFile(path);
    } catch (InvalidPathException notPath) {
      throw new Unreadable(text, WANTED);
    }
  }

  /** The file in the user's data folder that is meant where no other is named. */
  static LedgerAddress standard() {
    return new InFile(Path.of(AppDirsFactory.getInstance().getUserDataDir("hankbook", null, null), "ledger"));
  }
}
