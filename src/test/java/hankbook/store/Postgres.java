package hankbook.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/** One PostgreSQL server for all tests of a run, with a database of its own for each. It stops with the run. */
public final class Postgres {
  private static final String USER = "postgres";
  private static final AtomicInteger DATABASES = new AtomicInteger();

  private Postgres() {}

  /** A database in which there is nothing. */
  public static LedgerAddress.AtServer blank() {
    return database("template1");
  }

  /** A ledger in which nothing was entered. */
  public static LedgerAddress.AtServer ledger() {
    return database(Template.NAME);
  }

  /** The same database as another user, who has no password. */
  static LedgerAddress.AtServer as(String user, LedgerAddress.AtServer address) {
    return new LedgerAddress.AtServer(address.url().replace("user=" + USER, "user=" + user));
  }

  /** Runs a statement as the server's owner. */
  static void run(String statement) {
    try (Connection connection = Server.RUNNING.getPostgresDatabase().getConnection(); Statement sql = connection.createStatement()) {
      sql.execute(statement);
    } catch (SQLException broken) {
      throw new AssertionError(broken);
    }
  }

  private static LedgerAddress.AtServer database(String template) {
    String name = "ledger_" + DATABASES.incrementAndGet();
    run("create database " + name + " template " + template + " strategy file_copy");
    return new LedgerAddress.AtServer(Server.RUNNING.getJdbcUrl(USER, name));
  }

  private static final class Server {
    static final EmbeddedPostgres RUNNING = start();

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.builder().setServerConfig("max_connections", "200").start();
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
  }

  private static final class Template {
    static final String NAME = make();

    private static String make() {
      LedgerAddress.AtServer address = database("template1");
      try {
        Store.open(address).close();
        return address.text().replaceFirst(".*/", "");
      } catch (LedgerUnavailable broken) {
        throw new AssertionError(broken);
      }
    }
  }
}
