package hankbook.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** Brings a ledger's tables up to what this program knows. */
final class Schema {
  /** The number of the newest file under db; read by hand first, since asking Flyway costs a noticeable part of a start. */
  static final int NEWEST = 14;

  private static final String HISTORY = "flyway_schema_history";

  private Schema() {}

  static void bringUp(LedgerAddress address, DataSource source) throws SQLException, LedgerUnavailable {
    int version = version(address, source);
    if (version > NEWEST) {
      throw WhyUnavailable.because(address, "was written by a newer Hankbook than this one; use that, or give another ledger with --ledger");
    }
    if (version < NEWEST) {
      Flyway.configure(Schema.class.getClassLoader()).dataSource(source).locations("classpath:db/migration", "classpath:db/" + vendor(address)).load().migrate();
    }
  }

  private static String vendor(LedgerAddress address) {
    return switch (address) {
      case LedgerAddress.InFile _ -> "h2";
      case LedgerAddress.AtServer _ -> "postgresql";
    };
  }

  /** Zero for a database that is empty. */
  private static int version(LedgerAddress address, DataSource source) throws SQLException, LedgerUnavailable {
    try (Connection connection = source.getConnection()) {
      if (!hasTable(connection, HISTORY)) {
        if (hasTable(connection, "%")) {
          throw WhyUnavailable.because(address, "holds something else, and no ledger; give an empty database, or another ledger with --ledger");
        }
        return 0;
      }
      try (Statement statement = connection.createStatement();
          ResultSet newest = statement.executeQuery("select max(cast(version as integer)) from " + HISTORY + " where success")) {
        return newest.next() ? newest.getInt(1) : 0;
      }
    }
  }

  private static boolean hasTable(Connection connection, String name) throws SQLException {
    try (ResultSet tables = connection.getMetaData().getTables(null, connection.getSchema(), name, new String[] {"TABLE", "BASE TABLE"})) {
      return tables.next();
    }
  }
}
