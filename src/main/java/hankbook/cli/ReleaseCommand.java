package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Release;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Gives back what was promised to a plan. */
@NullUnmarked
@Command(name = "release", description = "Give back to the shelf all that is reserved for a plan.", mixinStandardHelpOptions = true)
final class ReleaseCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Release(studio).plan(UUID.randomUUID(), plan).stream().toList());
  }
}
