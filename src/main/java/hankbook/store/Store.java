package hankbook.store;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.sql.Statement;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;
import org.h2.engine.Constants;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/** An open ledger. Every use of it is a transaction: all of it is done, or none. */
public final class Store implements AutoCloseable {
  private static final int ATTEMPTS = 8;
  private static final long WAIT_MILLISECONDS = 20;

  /** Serialization failure, deadlock, lock not had in time (PostgreSQL, H2): another program was at the same rows, and trying again can help. */
  private static final Set<String> TRY_AGAIN = Set.of("40001", "40P01", "55P03", "HYT00");

  private static final String LOST = "08006";

  private final LedgerAddress address;
  private final DataSource source;
  private final HikariDataSource pool;

  private Store(LedgerAddress address, DataSource source, HikariDataSource pool) {
    this.address = address;
    this.source = source;
    this.pool = pool;
  }

  /**
   * Opens a ledger, and makes it where there is none.
   *
   * @throws LedgerUnavailable if another program holds the file, the server does not answer, or it is no ledger that this program can read
   */
  public static Store open(LedgerAddress address) throws LedgerUnavailable {
    DataSource source = Connections.source(address);
    try {
      if (address instanceof LedgerAddress.InFile file && !file.isThere()) {
        NewFile.make(file);
      }
      return open(address, source);
    } catch (SQLException | FlywayException | HikariPool.PoolInitializationException problem) {
      throw WhyUnavailable.of(address, problem);
    }
  }

  /** One connection stays open meanwhile, so that H2 does not close the file between the steps. */
  private static Store open(LedgerAddress address, DataSource source) throws SQLException, LedgerUnavailable {
    try (Connection _ = source.getConnection()) {
      Schema.bringUp(address, source);
      return new Store(address, source, Connections.pool(address, source));
    }
  }

  /** Where it is kept. */
  public LedgerAddress address() {
    return address;
  }

  /** Reads from the ledger as it stood at one moment. */
  public <T> T read(Function<Session, T> work) {
    return attempt(oneMoment(), work);
  }

  /** H2's repeatable read takes each table as it stands when it is first read. */
  private int oneMoment() {
    return isInFile() ? Constants.TRANSACTION_SNAPSHOT : Connection.TRANSACTION_REPEATABLE_READ;
  }

  /**
   * Writes to the ledger. When it returns, what was written outlives the program, and on H2 the disk has been asked to keep it. The work may be
   * run again from its start where another program was in the way.
   *
   * @throws EntryRefused if an entry was; then nothing of the work is done
   */
  public <T> T write(Function<Session, T> work) {
    T result = attempt(Connection.TRANSACTION_READ_COMMITTED, session -> {
      session.lockChain();
      return work.apply(session);
    });
    if (isInFile()) {
      askTheDisk();
    }
    return result;
  }

  /** Apart from the work, which must not be run again once it is committed. */
  private void askTheDisk() {
    try (Connection connection = pool.getConnection(); Statement statement = connection.createStatement()) {
      statement.execute("checkpoint sync");
    } catch (SQLException problem) {
      throw unanswered(problem);
    }
  }

  private <T> T attempt(int isolation, Function<Session, T> work) {
    for (int attempt = 1; ; attempt++) {
      try {
        return once(isolation, work);
      } catch (DataAccessException problem) {
        String state = state(problem);
        if (isSilence(state)) {
          throw new LedgerSilent(address, problem);
        }
        if (attempt == ATTEMPTS || !TRY_AGAIN.contains(state)) {
          throw problem;
        }
        pause(attempt);
      }
    }
  }

  private static String state(DataAccessException problem) {
    SQLException cause = problem.getCause(SQLException.class);
    return cause == null ? "" : cause instanceof SQLTransientConnectionException ? LOST : Objects.requireNonNullElse(cause.getSQLState(), "");
  }

  /** The connection was lost, or the server is being shut down. */
  private static boolean isSilence(String state) {
    return state.startsWith("08") || state.startsWith("57P");
  }

  private <T> T once(int isolation, Function<Session, T> work) {
    try (Connection connection = pool.getConnection()) {
      connection.setTransactionIsolation(isolation);
      DSLContext sql = DSL.using(connection, dialect(), new Settings().withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED));
      try {
        T result = work.apply(new Session(sql));
        connection.commit();
        return result;
      } catch (SQLException | RuntimeException | Error problem) {
        takeBack(connection, problem);
        throw problem;
      }
    } catch (SQLException problem) {
      throw unanswered(problem);
    }
  }

  private static void takeBack(Connection connection, Throwable problem) {
    try {
      connection.rollback();
    } catch (SQLException alsoGone) {
      problem.addSuppressed(alsoGone);
    }
  }

  private DataAccessException unanswered(SQLException problem) {
    return new DataAccessException("The ledger " + address.text() + " does not answer: " + problem.getMessage(), problem);
  }

  private boolean isInFile() {
    return address instanceof LedgerAddress.InFile;
  }

  private SQLDialect dialect() {
    return isInFile() ? SQLDialect.H2 : SQLDialect.POSTGRES;
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
    if (address instanceof LedgerAddress.InFile file) {
      Room.giveBack(file, source);
    }
  }
}
