package hankbook.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a ledger's tables up to what this program knows. */
final class Schema {
  /** The number of the newest file under db; read by hand first, since asking Flyway costs a noticeable part of a start. */
  static final int NEWEST = 2;

  private Schema() {}

  static void bringUp(LedgerAddress address, DataSource source) throws SQLException, LedgerUnavailable {
    int version = version(source);
    if (version > NEWEST) {
      throw new LedgerUnavailable(
          "The ledger " + address.text() + " was written by a newer Hankbook than this one; use that, or give another ledger with --ledger.", new FlywayException());
    }
    if (version < NEWEST) {
      String vendor = address instanceof LedgerAddress.InFile ? "h2" : "postgresql";
      Flyway.configure(Schema.class.getClassLoader())
          .dataSource(source)
          .locations("classpath:db/migration", "classpath:db/" + vendor)
          .load()
          .migrate();
    }
  }

  /** Zero for a database in which no ledger was ever kept. */
  private static int version(DataSource source) throws SQLException {
    try (Connection connection = source.getConnection()) {
      try (ResultSet tables = connection.getMetaData().getTables(null, null, "flyway_schema_history", null)) {
        if (!tables.next()) {
          return 0;
        }
      }
      try (Statement statement = connection.createStatement();
          ResultSet newest = statement.executeQuery("select max(cast(version as integer)) from flyway_schema_history where success")) {
        return newest.next() ? newest.getInt(1) : 0;
      }
    }
  }
}
