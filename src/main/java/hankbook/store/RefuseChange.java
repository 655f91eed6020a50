package hankbook.store;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;
import org.jspecify.annotations.Nullable;

/** Called by H2 before a change of what must stay as it was written. */
public final class RefuseChange implements Trigger {
  private String table = "";

  @Override
  public void init(Connection connection, String schema, String trigger, String tableName, boolean before, int type) {
    table = tableName;
  }

  @Override
  public void fire(Connection connection, Object @Nullable [] before, Object @Nullable [] after) throws SQLException {
    throw new SQLException("What is written in " + table + " is never altered; reverse the entry instead.", "P0001");
  }
}
