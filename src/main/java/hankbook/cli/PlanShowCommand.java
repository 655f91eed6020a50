package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.CheckPlan;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One plan. */
@NullUnmarked
@Command(name = "show", description = "A plan of the ledger, as the text of a plan file.", mixinStandardHelpOptions = true)
final class PlanShowCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.reading(studio -> {
      String text = new Plans(studio).text(plan).orElseThrow(() -> CheckPlan.noSuchPlan(plan));
      spec.commandLine().getOut().println(text.stripTrailing());
      return ExitCode.DONE;
    });
  }
}
