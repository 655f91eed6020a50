package hankbook.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.h2.api.Trigger;
import org.jspecify.annotations.Nullable;

/** Called by H2 after each transfer: takes its length from the balance of one place and gives it to that of the other. */
public final class MoveBalances implements Trigger {
  private static final int SKEIN = 2;
  private static final int FROM_PLACE = 3;
  private static final int FROM_PLAN = 4;
  private static final int TO_PLACE = 5;
  private static final int TO_PLAN = 6;
  private static final int TENTHS = 7;

  @Override
  public void fire(Connection connection, Object @Nullable [] before, Object @Nullable [] after) throws SQLException {
    if (after != null) {
      long tenths = (Long) after[TENTHS];
      move(connection, after[SKEIN], after[FROM_PLACE], after[FROM_PLAN], -tenths);
      move(connection, after[SKEIN], after[TO_PLACE], after[TO_PLAN], tenths);
    }
  }

  private static void move(Connection connection, Object skein, Object place, Object plan, long tenths) throws SQLException {
    if (run(connection, "update balance set tenths = tenths + ? where skein = ? and place = ? and plan = ?", tenths, skein, place, plan) == 0) {
      run(connection, "insert into balance (tenths, skein, place, plan) values (?, ?, ?, ?)", tenths, skein, place, plan);
    }
  }

  private static int run(Connection connection, String sql, Object... values) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      return statement.executeUpdate();
    }
  }
}
