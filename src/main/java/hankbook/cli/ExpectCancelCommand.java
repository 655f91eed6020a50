package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Ordered yarn will not come. */
@NullUnmarked
@Command(name = "cancel", description = "Give up skeins that are on order; the entries that ordered them are taken back.", mixinStandardHelpOptions = true)
final class ExpectCancelCommand extends LedgerCommand {
  @Parameters(paramLabel = "CODE", arity = "1..*", description = "The skeins by their codes.")
  private List<String> codes;

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the journal keeps it.")
  private String reason;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Expect(studio).cancel(codes, reason));
  }
}
