package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.OrderFile;
import hankbook.exchange.PlanFile;
import hankbook.plan.Plan;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PlanSections;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The sections of a plan's warp. */
@NullUnmarked
@Command(
    name = "sections",
    description = "The ends of a plan that are counted in units, added up both ways; and what a change of one section would do.",
    mixinStandardHelpOptions = true)
final class SectionsCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name, or a file that ends in .json.")
  private String plan;

  @Option(names = "--section", paramLabel = "NUMBER", description = "The section that would change, counted from 1.")
  private Integer section;

  @Option(names = "--repeats", paramLabel = "COUNT", description = "How often that section would come.")
  private Integer repeats;

  @Option(names = "--units", paramLabel = "COUNT", description = "How many units that section would have each time.")
  private Integer units;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    if ((section == null) != (repeats == null && units == null)) {
      throw new BadInput("found " + (section == null ? "--repeats or --units" : "--section") + " alone, wanted --section with --repeats, --units or both");
    }
    if (plan.endsWith(".json")) {
      return print(PlanFile.read(plan, TextFile.read(Path.of(plan))));
    }
    return ledger().inExisting(studio -> print(PlanSections.plan(studio, plan)));
  }

  private int print(Plan read) throws BadInput {
    out().println(section == null ? sums(read) : change(read));
    return ExitCode.DONE;
  }

  private String sums(Plan read) throws BadInput {
    return ledger().json() ? OrderFile.write(read.name(), PlanSections.of(plan, read), Optional.empty()) : SectionReport.of(PlanSections.of(plan, read));
  }

  private String change(Plan read) throws BadInput {
    PlanSections.Tried tried = PlanSections.tried(plan, read, new PlanSections.Wish(section, given(repeats), given(units)));
    return ledger().json() ? OrderFile.write(read.name(), tried.after(), Optional.of(tried.change())) : SectionReport.of(tried);
  }

  private static OptionalInt given(Integer number) {
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
