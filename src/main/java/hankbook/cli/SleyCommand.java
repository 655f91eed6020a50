package hankbook.cli;

import hankbook.allot.Judgement;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.gear.Gear;
import hankbook.gear.Sley;
import hankbook.measure.Sett;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.SleyPlan;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How do a plan's ends go through a reed? */
@NullUnmarked
@Command(name = "sley", description = "How do a plan's ends go through a reed, and what width does that really give?", mixinStandardHelpOptions = true)
final class SleyCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name, or a file that ends in .json.")
  private String plan;

  @Option(names = "--reed", paramLabel = "REED", description = "A reed of the studio by its name, or dents such as 12/in; without it, the plan's or any of the studio's.")
  private String reed;

  @Option(names = "--sett", paramLabel = "SETT", description = "The sett to be given, such as 10/cm; without it, the plan's.")
  private String sett;

  @Option(names = "--pattern", paramLabel = "ENDS", description = "Ends in the dents, such as 2-2-1; without it, the plan's or the nearest.")
  private String pattern;

  @Option(names = "--selvedge-per-dent", paramLabel = "COUNT", description = "How many of the plan's selvedge ends go in a dent; without it, they are sleyed like the rest.")
  private Integer selvedge;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    SleyPlan.Wish wish =
        new SleyPlan.Wish(
            Optional.ofNullable(reed),
            sett == null ? Optional.empty() : Optional.of(Typed.read("--sett", sett, Sett::parse)),
            pattern == null ? Optional.empty() : Optional.of(Typed.read("--pattern", pattern, Sley::parse)),
            selvedge == null ? OptionalInt.empty() : OptionalInt.of(selvedge));
    if (plan.endsWith(".json")) {
      return print(SleyPlan.of(plan, PlanFile.read(plan, TextFile.read(Path.of(plan))), Gear.UNKNOWN, Judgement.DEFAULT, wish));
    }
    return ledger().reading(studio -> print(SleyPlan.named(studio, plan, wish)));
  }

  private int print(SleyPlan.Sleyed sleyed) {
    out().println(ledger().json() ? GearJson.sleyed(sleyed) : SettReport.sleyed(sleyed));
    return ExitCode.DONE;
  }
}
