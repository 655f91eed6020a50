package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Reverse;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes an entry back. */
@NullUnmarked
@Command(name = "reverse", description = "Take an entry back by another that names it; nothing is ever erased.", mixinStandardHelpOptions = true)
final class ReverseCommand extends LedgerCommand {
  @Parameters(paramLabel = "NUMBER", description = "The entry's number in the journal.")
  private long number;

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the journal keeps it.")
  private String reason;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Reverse(studio).numbered(UUID.randomUUID(), number, reason).stream().toList());
  }
}
