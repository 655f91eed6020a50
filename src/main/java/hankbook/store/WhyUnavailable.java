package hankbook.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import org.h2.api.ErrorCode;
import org.jspecify.annotations.Nullable;

/** Says in one sentence why a ledger cannot be opened, and what can be done. */
final class WhyUnavailable {
  private static final Set<Integer> FILE_TROUBLE =
      Set.of(ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2, ErrorCode.FILE_CORRUPTED_1, ErrorCode.FILE_CREATION_FAILED_1);

  private WhyUnavailable() {}

  static LedgerUnavailable because(LedgerAddress address, String reason) {
    return because(address, reason, null);
  }

  static LedgerUnavailable because(LedgerAddress address, String reason, @Nullable Throwable problem) {
    return new LedgerUnavailable("The ledger " + address.text() + " " + reason + ".", problem);
  }

  static LedgerUnavailable of(LedgerAddress address, Throwable problem) {
    Optional<String> known = sql(problem).flatMap(sql -> switch (address) {
      case LedgerAddress.InFile file -> ofFile(Path.of(file.text()), sql.getErrorCode());
      case LedgerAddress.AtServer server -> ofServer(String.valueOf(sql.getSQLState()));
    });
    return because(address, known.orElseGet(() -> "cannot be opened: " + firstLine(problem)), problem);
  }

  private static Optional<String> ofFile(Path file, int code) {
    if (code == ErrorCode.DATABASE_ALREADY_OPEN_1) {
      return Optional.of("is open in another program; close it there first (to be shared it must lie on a PostgreSQL server)");
    }
    if (FILE_TROUBLE.contains(code)) {
      return Optional.of(
          Files.exists(file)
              ? "cannot be read, since it is damaged or no ledger at all; put back a copy of it, or give another with --ledger"
              : "cannot be made, since its folder takes no file; choose another with --ledger");
    }
    return Optional.empty();
  }

  private static Optional<String> ofServer(String state) {
    return Optional.ofNullable(switch (state.substring(0, 2)) {
      case "08" -> "does not answer; see that its server runs and that the address is right";
      case "28" -> "does not let you in; see that the user and the password are right";
      case "3D" -> "is not on its server; have a database of that name made there first";
      case "53" -> "takes no more connections; try again when fewer programs use it";
      default -> null;
    });
  }

  private static Optional<SQLException> sql(Throwable problem) {
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException sql) {
        return Optional.of(sql);
      }
    }
    return Optional.empty();
  }

  private static String firstLine(Throwable problem) {
    String message = String.valueOf(problem.getMessage()).lines().filter(line -> !line.isBlank()).findFirst().orElse("").strip();
    return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
  }
}
