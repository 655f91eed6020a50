package hankbook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;

/** Gives back what a file takes on the disk for nothing: while it is open it only grows, see {@link Connections}. */
final class Room {
  private static final long SMALL = 4L << 20;
  private static final int MOSTLY_IN_USE = 50;

  private Room() {}

  /** Writes the file anew if it is large and mostly holds what was replaced since; nobody may have it open. */
  static void giveBack(LedgerAddress.InFile address, DataSource source) {
    try {
      if (Files.size(Path.of(address.text())) > SMALL) {
        compact(source);
      }
    } catch (IOException | SQLException notNow) {
      // The ledger is whole as it is; the next one to close it tries again.
    }
  }

  private static void compact(DataSource source) throws SQLException {
    try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
      int users = number(statement, "select count(*) from information_schema.sessions");
      int percentInUse = number(statement, "select cast(setting_value as integer) from information_schema.settings where setting_name = 'info.CHUNKS_FILL_RATE'");
      if (users == 1 && percentInUse < MOSTLY_IN_USE) {
        statement.execute("shutdown compact");
      }
    }
  }

  private static int number(Statement statement, String query) throws SQLException {
    try (ResultSet row = statement.executeQuery(query)) {
      return row.next() ? row.getInt(1) : 0;
    }
  }
}
