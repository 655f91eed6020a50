package hankbook.cli;

import hankbook.cost.Alternatives;
import hankbook.exchange.AlternativesFile;
import hankbook.exchange.BadInput;
import hankbook.exchange.VariationText;
import hankbook.plan.Plan;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Alternative;
import hankbook.studio.CheckPlan;
import hankbook.studio.ComparePlans;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Several plans, or variants of one, side by side. */
@NullUnmarked
@Command(name = "compare", description = "Lay two to four plans side by side, or variants of the first.", mixinStandardHelpOptions = true)
final class CompareCommand extends LedgerCommand {
  @Parameters(arity = "1..*", paramLabel = "PLAN", description = "Plans of the ledger by their names.")
  private List<String> plans;

  @Option(names = "--vary", paramLabel = "CHANGES",
      description = "Also lay beside them the first plan with a few values said otherwise, such as 'sett=8/cm; pieces=6; width=50 cm; sampling=1 m' or 'YARN, COLOUR=YARN, COLOUR'. May be given several times.")
  private List<String> variants;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Alternatives found = new ComparePlans(studio).all(wanted(studio));
      out().println(ledger().json() ? AlternativesFile.write(found) : CompareReport.of(found));
      return found.contenders().stream().allMatch(plan -> plan.check().isShort()) ? ExitCode.SHORT : ExitCode.DONE;
    });
  }

  private List<Alternative> wanted(Studio studio) throws BadInput {
    List<Alternative> wanted = new ArrayList<>(plans.stream().map(Alternative::kept).toList());
    if (variants != null) {
      Plan first = new CheckPlan(studio).plan(plans.getFirst());
      for (String changes : variants) {
        wanted.add(new Alternative(changes.strip(), plans.getFirst(), Typed.read("--vary", changes, text -> VariationText.read(text, first))));
      }
    }
    return wanted;
  }
}
