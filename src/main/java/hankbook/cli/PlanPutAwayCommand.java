package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a plan off the list. */
@NullUnmarked
@Command(name = "put-away", description = "Take a plan off the list; no yarn may be reserved for it or on its loom.", mixinStandardHelpOptions = true)
final class PlanPutAwayCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.reading(studio -> {
      new Plans(studio).putAway(plan);
      spec.commandLine().getOut().println(ledger.json() ? LedgerJson.kept(plan) : "Put the plan " + plan + " away.");
      return ExitCode.DONE;
    });
  }
}
