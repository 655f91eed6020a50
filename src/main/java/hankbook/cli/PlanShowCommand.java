package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.CheckPlan;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** One plan. */
@NullUnmarked
@Command(name = "show", description = "A plan of the ledger, as the text of a plan file.", mixinStandardHelpOptions = true)
final class PlanShowCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      String text = new Plans(studio).text(plan).orElseThrow(() -> CheckPlan.noSuchPlan(plan));
      out().println(text.stripTrailing());
      return ExitCode.DONE;
    });
  }
}
