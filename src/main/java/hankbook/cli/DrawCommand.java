package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Draw;
import hankbook.studio.NotDone;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes yarn onto the loom. */
@NullUnmarked
@Command(name = "draw", description = "Take all that is reserved for a plan onto its loom.", mixinStandardHelpOptions = true)
final class DrawCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Draw(studio).plan(UUID.randomUUID(), plan).stream().toList());
  }
}
