package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PlanStanding;
import hankbook.studio.PlanStandings;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** The plans of the ledger. */
@NullUnmarked
@Command(name = "list", description = "The plans of the ledger, and whether the shelf covers each.", mixinStandardHelpOptions = true)
final class PlanListCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      List<PlanStanding> standings = new PlanStandings(studio).all();
      out().println(ledger().json() ? LedgerJson.plans(standings) : LedgerReport.plans(standings));
      return ExitCode.DONE;
    });
  }
}
