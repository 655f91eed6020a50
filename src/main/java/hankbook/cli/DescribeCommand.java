package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Describe;
import hankbook.studio.NotDone;
import hankbook.studio.SkeinFacts;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says something else of skeins than was said before. */
@NullUnmarked
@Command(
    name = "describe",
    description = "Mend the dye lot, place, cost or day of skeins; what was said before is kept. No metres change by it.",
    mixinStandardHelpOptions = true)
final class DescribeCommand extends LedgerCommand {
  @Parameters(paramLabel = "SKEIN", arity = "1..*", description = "The skeins by their codes.")
  private List<String> codes;

  @Mixin private Told told;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    SkeinFacts facts = told.facts();
    if (!facts.saySomething()) {
      throw new BadInput("describe " + String.join(" ", codes) + ": found nothing to say, wanted --lot, --location, --cost or --on");
    }
    return ledger().reading(studio -> {
      int changed = new Describe(studio).skeins(codes, facts);
      out().println(ledger().json() ? ExpectedJson.changed(changed) : LedgerReport.described(changed));
      return ExitCode.DONE;
    });
  }
}
