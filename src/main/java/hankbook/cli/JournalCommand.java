package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Journal;
import hankbook.studio.JournalEntry;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Everything that was done. */
@NullUnmarked
@Command(name = "journal", description = "Everything that was done, the newest first.", mixinStandardHelpOptions = true)
final class JournalCommand extends LedgerCommand {
  @Option(names = "--skein", paramLabel = "CODE", description = "Only entries that move this skein.")
  private String code;

  @Option(names = "--most", paramLabel = "COUNT", defaultValue = "20", description = "At most so many entries; 0 for all.")
  private int most;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().reading(studio -> {
      List<JournalEntry> entries =
          new Journal(studio).newestFirst().stream()
              .filter(entry -> code == null || entry.moves(code))
              .limit(most > 0 ? most : Long.MAX_VALUE)
              .toList();
      out().println(ledger().json() ? LedgerJson.journal(entries) : LedgerReport.journal(entries));
      return ExitCode.DONE;
    });
  }
}
