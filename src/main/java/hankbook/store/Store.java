package hankbook.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;
import org.h2.api.ErrorCode;
import org.h2.jdbcx.JdbcDataSource;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.postgresql.ds.PGSimpleDataSource;

/** An open ledger. Every use of it is a transaction: all of it is done, or none. */
public final class Store implements AutoCloseable {
  private static final int ATTEMPTS = 8;
  private static final long WAIT_MILLISECONDS = 20;

  /** Serialization failure, deadlock, lock not had in time (H2): another program was at the same rows, and trying again can help. */
  private static final Set<String> TRY_AGAIN = Set.of("40001", "40P01", "HYT00");

  private final LedgerAddress address;
  private final HikariDataSource pool;

  private Store(LedgerAddress address, HikariDataSource pool) {
    this.address = address;
    this.pool = pool;
  }

  /**
   * Opens a ledger, and makes it where there is none.
   *
   * @throws LedgerUnavailable if another program holds the file, the server does not answer, or it is no ledger that this program can read
   */
  public static Store open(LedgerAddress address) throws LedgerUnavailable {
    try {
      DataSource source = source(address);
      // One connection stays open meanwhile, so that H2 does not close the file between the steps.
      try (Connection _ = source.getConnection()) {
        Schema.bringUp(address, source);
        return new Store(address, pool(source));
      }
    } catch (SQLException | FlywayException | IOException problem) {
      throw unavailable(address, problem);
    }
  }

  private static DataSource source(LedgerAddress address) throws IOException {
    return switch (address) {
      case LedgerAddress.InFile(Path file) -> inFile(file);
      case LedgerAddress.AtServer(String url) -> atServer(url);
    };
  }

  private static DataSource inFile(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    JdbcDataSource source = new JdbcDataSource();
    // Without WRITE_DELAY=0 entries already acknowledged are lost when the program is killed.
    source.setURL("jdbc:h2:file:" + file.toString().replace(";", "\\;") + ";DATABASE_TO_LOWER=TRUE;WRITE_DELAY=0;LOCK_TIMEOUT=10000");
    return source;
  }

  private static DataSource atServer(String url) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setURL(url);
    return source;
  }

  private static HikariDataSource pool(DataSource source) {
    HikariConfig config = new HikariConfig();
    config.setDataSource(source);
    config.setMaximumPoolSize(4);
    config.setMinimumIdle(1);
    config.setAutoCommit(false);
    config.setPoolName("ledger");
    return new HikariDataSource(config);
  }

  private static LedgerUnavailable unavailable(LedgerAddress address, Exception problem) {
    if (problem instanceof SQLException sql && sql.getErrorCode() == ErrorCode.DATABASE_ALREADY_OPEN_1) {
      return new LedgerUnavailable(
          "The ledger " + address.text() + " is open in another program; close it there first. (To be shared it must lie on a PostgreSQL server.)", problem);
    }
    String reason = String.valueOf(problem.getMessage()).lines().findFirst().orElse("");
    return new LedgerUnavailable("The ledger " + address.text() + " cannot be opened: " + reason, problem);
  }

  /** Where it is kept. */
  public LedgerAddress address() {
    return address;
  }

  /** Reads from the ledger as it stood at one moment. */
  public <T> T read(Function<Session, T> work) {
    return attempt(Connection.TRANSACTION_REPEATABLE_READ, work, session -> {});
  }

  /**
   * Writes to the ledger. When it returns, what was written outlives the program, and on H2 the disk has been asked to keep it. The work may be
   * run again from its start where another program was in the way.
   *
   * @throws EntryRefused if an entry was; then nothing of the work is done
   */
  public <T> T write(Function<Session, T> work) {
    return attempt(Connection.TRANSACTION_READ_COMMITTED, session -> {
      session.lockChain();
      return work.apply(session);
    }, this::askTheDisk);
  }

  private void askTheDisk(DSLContext sql) {
    if (address instanceof LedgerAddress.InFile) {
      sql.execute("checkpoint sync");
    }
  }

  private <T> T attempt(int isolation, Function<Session, T> work, Consumer<DSLContext> afterwards) {
    for (int attempt = 1; ; attempt++) {
      try {
        return once(isolation, work, afterwards);
      } catch (DataAccessException problem) {
        if (attempt == ATTEMPTS || !TRY_AGAIN.contains(problem.sqlState())) {
          throw problem;
        }
        pause(attempt);
      }
    }
  }

  private <T> T once(int isolation, Function<Session, T> work, Consumer<DSLContext> afterwards) {
    try (Connection connection = pool.getConnection()) {
      connection.setTransactionIsolation(isolation);
      DSLContext sql = DSL.using(connection, dialect(), new Settings().withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED));
      try {
        T result = work.apply(new Session(sql));
        connection.commit();
        afterwards.accept(sql);
        return result;
      } catch (RuntimeException | Error problem) {
        connection.rollback();
        throw problem;
      }
    } catch (SQLException problem) {
      throw new DataAccessException("The ledger " + address.text() + " does not answer: " + problem.getMessage(), problem);
    }
  }

  private SQLDialect dialect() {
    return address instanceof LedgerAddress.InFile ? SQLDialect.H2 : SQLDialect.POSTGRES;
  }

  private static void pause(int attempt) {
    try {
      Thread.sleep(WAIT_MILLISECONDS * attempt);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while waiting for the ledger", stopped);
    }
  }

  @Override
  public void close() {
    pool.close();
  }
}
