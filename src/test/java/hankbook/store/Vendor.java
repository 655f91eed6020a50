package hankbook.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The databases that a ledger may lie in. */
public enum Vendor {
  H2("23513", "23506", "h2"),
  POSTGRESQL("23514", "23503", "postgresql");

  private static final List<String> TRIGGERS =
      List.of("entry_is_kept on entry", "transfer_is_kept on transfer", "transfer_moves_balances on transfer", "plan_version_is_kept on plan_version");

  final String checkState;
  final String foreignKeyState;
  final String folder;

  Vendor(String checkState, String foreignKeyState, String folder) {
    this.checkState = checkState;
    this.foreignKeyState = foreignKeyState;
    this.folder = folder;
  }

  /** Where there is no ledger yet. */
  public LedgerAddress blank(Path folder) {
    return this == H2 ? new LedgerAddress.InFile(folder.resolve("ledger")) : Postgres.blank();
  }

  /** A ledger in which nothing was entered. */
  public LedgerAddress ledger(Path folder) {
    return this == H2 ? Template.copied(folder) : Postgres.ledger();
  }

  /** A connection behind the program's back. */
  public static Connection behind(LedgerAddress address) throws SQLException {
    try {
      return Connections.source(address).getConnection();
    } catch (LedgerUnavailable broken) {
      throw new AssertionError(broken);
    }
  }

  /** Runs statements behind the program's back. */
  public static void run(LedgerAddress address, String... statements) throws SQLException {
    try (Connection connection = behind(address); Statement sql = connection.createStatement()) {
      for (String statement : statements) {
        sql.execute(statement);
      }
    }
  }

  /** Takes the guards away, as only someone bent on it would. */
  public void disarm(LedgerAddress address) throws SQLException {
    run(address, TRIGGERS.stream().map(trigger -> "drop trigger " + (this == H2 ? trigger.replaceFirst(" .*", "") : trigger)).toArray(String[]::new));
  }

  private static final class Template {
    private static final byte[] MIGRATED = make();

    static LedgerAddress.InFile copied(Path folder) {
      LedgerAddress.InFile address = new LedgerAddress.InFile(folder.resolve("ledger"));
      try {
        Files.write(Path.of(address.text()), MIGRATED);
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
      return address;
    }

    private static byte[] make() {
      try (Scratch scratch = new Scratch()) {
        LedgerAddress.InFile address = new LedgerAddress.InFile(scratch.folder().resolve("template"));
        Store.open(address).close();
        return Files.readAllBytes(Path.of(address.text()));
      } catch (IOException | LedgerUnavailable broken) {
        throw new AssertionError(broken);
      }
    }
  }
}
