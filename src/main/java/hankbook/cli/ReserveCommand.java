package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Reserve;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Promises yarn to a plan. */
@NullUnmarked
@Command(name = "reserve", description = "Reserve for a plan the skeins that check chooses; what it no longer wants is released.", mixinStandardHelpOptions = true)
final class ReserveCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Option(names = "--even-if-short", description = "Reserve what there is of a plan that is short.")
  private boolean evenIfShort;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Reserve(studio).plan(UUID.randomUUID(), plan, evenIfShort));
  }
}
