package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.VariationText;
import hankbook.plan.Plan;
import hankbook.plan.Variation;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.CheckPlan;
import hankbook.studio.CopyPlan;
import hankbook.studio.NotDone;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a plan of another. */
@NullUnmarked
@Command(name = "duplicate", description = "Make a new plan that says the same as one of the ledger; nothing is reserved for it.", mixinStandardHelpOptions = true)
final class PlanDuplicateCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Option(names = "--as", paramLabel = "NAME", description = "What the new plan is called; without it the same with a number behind it.")
  private String as;

  @Option(names = "--vary", paramLabel = "CHANGES", description = "A few values said otherwise, as compare takes them.")
  private String changes;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      CopyPlan copy = new CopyPlan(studio);
      String name = changes == null ? copy.duplicate(plan, Optional.ofNullable(as)) : copy.vary(plan, variation(new CheckPlan(studio).plan(plan)), Optional.ofNullable(as));
      out().println(ledger().json() ? LedgerJson.kept(name) : "Kept the plan " + name + ". plan put-away takes it off the list again.");
      return ExitCode.DONE;
    });
  }

  private Variation variation(Plan of) throws BadInput {
    return Typed.read("--vary", changes, text -> VariationText.read(text, of));
  }
}
