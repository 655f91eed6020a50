package hankbook.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;
import org.postgresql.ds.PGSimpleDataSource;

/** Where the connections to a ledger come from. */
final class Connections {
  /** How long a server may take to answer, where its address does not say. */
  private static final int SECONDS_TO_ANSWER = 10;

  private static final int SECONDS_FOR_ONE_QUESTION = 120;

  /** A program that hangs with the end of the chain locked must not keep all others waiting for ever. */
  private static final String LET_GO = "-c lock_timeout=20000 -c idle_in_transaction_session_timeout=60000";

  private Connections() {}

  static DataSource source(LedgerAddress address) throws LedgerUnavailable {
    return switch (address) {
      case LedgerAddress.InFile file -> inFile(file);
      case LedgerAddress.AtServer(String url) -> atServer(url);
    };
  }

  private static DataSource inFile(LedgerAddress.InFile address) throws LedgerUnavailable {
    Path file = address.file();
    if (StreamSupport.stream(file.spliterator(), false).anyMatch(name -> name.toString().contains(";") || name.toString().contains("\\"))) {
      throw WhyUnavailable.because(address, "has a semicolon or a backslash in its name, which the database cannot take; give another with --ledger");
    }
    if (Files.isDirectory(file) || Files.isDirectory(Path.of(address.text()))) {
      throw WhyUnavailable.because(address, "cannot be made, since there is a folder of that name; give a file in it, such as " + file.resolve("ledger"));
    }
    try {
      Files.createDirectories(file.getParent());
    } catch (IOException problem) {
      throw WhyUnavailable.because(address, "cannot be made, since its folder cannot be; choose another with --ledger", problem);
    }
    JdbcDataSource source = new JdbcDataSource();
    // Without async a thread that is interrupted closes the file for all. Entries already acknowledged are lost when the program is killed: without
    // WRITE_DELAY=0, since they are not written yet, and with REUSE_SPACE, since H2 does not find what it wrote to an earlier part of the file than
    // it had foreseen. With a trace file every refusal would be written beside the ledger.
    source.setURL("jdbc:h2:async:" + file + ";DATABASE_TO_LOWER=TRUE;WRITE_DELAY=0;REUSE_SPACE=FALSE;LOCK_TIMEOUT=10000;TRACE_LEVEL_FILE=0");
    return source;
  }

  private static DataSource atServer(String url) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setURL(url);
    if (source.getLoginTimeout() == 0) {
      source.setLoginTimeout(SECONDS_TO_ANSWER);
    }
    if (source.getSocketTimeout() == 0) {
      source.setSocketTimeout(SECONDS_FOR_ONE_QUESTION);
    }
    if (source.getOptions() == null) {
      source.setOptions(LET_GO);
    }
    source.setTcpKeepAlive(true);
    return source;
  }

  static HikariDataSource pool(LedgerAddress address, DataSource source) {
    HikariConfig config = new HikariConfig();
    config.setDataSource(source);
    config.setMaximumPoolSize(4);
    config.setMinimumIdle(1);
    config.setAutoCommit(false);
    config.setPoolName("ledger");
    if (address instanceof LedgerAddress.InFile) {
      // H2 lets go of the file with its last connection, and another program could take it then.
      config.setMaxLifetime(0);
    }
    return new HikariDataSource(config);
  }
}
