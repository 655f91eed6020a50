package hankbook.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.UUID;
import javax.sql.DataSource;

/**
 * Makes the file of a ledger that is not there yet: beside its place first, and put there when it is whole. H2 does not take back half made tables,
 * so a program killed meanwhile would leave a file that no later one could read.
 */
final class NewFile {
  private NewFile() {}

  static void make(LedgerAddress.InFile address) throws LedgerUnavailable, SQLException {
    LedgerAddress.InFile beside = new LedgerAddress.InFile(address.file().resolveSibling(address.file().getFileName() + "." + UUID.randomUUID() + ".new"));
    try {
      fill(beside);
      Files.move(Path.of(beside.text()), Path.of(address.text()));
    } catch (FileAlreadyExistsException otherWasFaster) {
      // The ledger that is there now is as good.
    } catch (IOException problem) {
      throw WhyUnavailable.because(address, "cannot be made, since its folder takes no file; choose another with --ledger", problem);
    } finally {
      clear(beside);
    }
  }

  private static void fill(LedgerAddress.InFile beside) throws LedgerUnavailable, SQLException {
    DataSource source = Connections.source(beside);
    try (Connection _ = source.getConnection()) {
      Schema.bringUp(beside, source);
    }
  }

  private static void clear(LedgerAddress.InFile beside) {
    try {
      Files.deleteIfExists(Path.of(beside.text()));
    } catch (IOException staysBehind) {
      // It is in nobody's way.
    }
  }
}
