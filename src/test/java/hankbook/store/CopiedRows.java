package hankbook.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Copies the rows of a table from one ledger to another behind the program's back, as far as the other has such columns. */
final class CopiedRows {
  private CopiedRows() {}

  static void of(LedgerAddress from, String table, LedgerAddress to) throws SQLException {
    try (Connection source = Vendor.behind(from); Connection target = Vendor.behind(to)) {
      List<String> columns = columns(target, table);
      String names = String.join(", ", columns);
      String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
      target.setAutoCommit(true);
      try (Statement all = source.createStatement();
          ResultSet rows = all.executeQuery("select " + names + " from " + table);
          PreparedStatement insert = target.prepareStatement("insert into " + table + " (" + names + ") values (" + marks + ")")) {
        while (rows.next()) {
          for (int i = 1; i <= columns.size(); i++) {
            insert.setObject(i, rows.getObject(i));
          }
          insert.executeUpdate();
        }
      }
    }
  }

  private static List<String> columns(Connection connection, String table) throws SQLException {
    List<String> names = new ArrayList<>();
    try (ResultSet columns = connection.getMetaData().getColumns(null, connection.getSchema(), table, "%")) {
      while (columns.next()) {
        names.add(columns.getString("COLUMN_NAME"));
      }
    }
    return names;
  }
}
