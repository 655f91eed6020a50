package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes a plan off the list. */
@NullUnmarked
@Command(name = "put-away", description = "Take a plan off the list; no yarn may be reserved for it or on its loom.", mixinStandardHelpOptions = true)
final class PlanPutAwayCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      new Plans(studio).putAway(plan);
      out().println(ledger().json() ? LedgerJson.kept(plan) : "Put the plan " + plan + " away.");
      return ExitCode.DONE;
    });
  }
}
