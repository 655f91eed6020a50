package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.NotDone;
import hankbook.studio.SkeinFacts;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Ordered yarn comes into the house. */
@NullUnmarked
@Command(name = "arrived", description = "Take skeins that were on order into the house, and say what is known of them now; without --on they came today.", mixinStandardHelpOptions = true)
final class ExpectArrivedCommand extends LedgerCommand {
  @Parameters(paramLabel = "CODE", arity = "1..*", description = "The skeins by their codes.")
  private List<String> codes;

  @Mixin private Told told;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    SkeinFacts facts = told.facts();
    return ledger().entering(out(), studio -> new Expect(studio).arrived(UUID.randomUUID(), codes, facts).stream().toList());
  }
}
