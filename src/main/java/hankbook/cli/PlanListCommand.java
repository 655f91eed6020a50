package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PlanStanding;
import hankbook.studio.PlanStandings;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The plans of the ledger. */
@NullUnmarked
@Command(name = "list", description = "The plans of the ledger, and whether the shelf covers each.", mixinStandardHelpOptions = true)
final class PlanListCommand implements Callable<Integer> {

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.reading(studio -> {
      List<PlanStanding> standings = new PlanStandings(studio).all();
      spec.commandLine().getOut().println(ledger.json() ? LedgerJson.plans(standings) : LedgerReport.plans(standings));
      return ExitCode.DONE;
    });
  }
}
