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
    return ledger().inExisting(studio -> {
      List<JournalEntry> all = new Journal(studio).newestFirst().stream().filter(entry -> code == null || entry.moves(code)).toList();
      List<JournalEntry> entries = most > 0 ? all.subList(0, Math.min(most, all.size())) : all;
      out().println(ledger().json() ? LedgerJson.journal(entries) : LedgerReport.journal(entries, all.size()));
      return ExitCode.DONE;
    });
  }
}
