package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.NotDone;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Ordered yarn comes into the house. */
@NullUnmarked
@Command(name = "arrived", description = "Take skeins that were on order into the house.", mixinStandardHelpOptions = true)
final class ExpectArrivedCommand extends LedgerCommand {
  @Parameters(paramLabel = "CODE", arity = "1..*", description = "The skeins by their codes.")
  private List<String> codes;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Expect(studio).arrived(UUID.randomUUID(), codes).stream().toList());
  }
}
