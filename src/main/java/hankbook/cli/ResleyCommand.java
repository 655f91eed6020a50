package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Sett;
import hankbook.plan.SettChange;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Resley;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What does another sett do to a warp that is beamed? */
@NullUnmarked
@Command(name = "resley", description = "Sley a beamed warp to another sett: its ends stay, and the width moves.", mixinStandardHelpOptions = true)
final class ResleyCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Parameters(index = "1", paramLabel = "SETT", description = "The new sett, such as 11/cm.")
  private String sett;

  @Option(names = "--keep", description = "Keep the plan with this sett and with its ends given outright; without it, it is only shown.")
  private boolean keep;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Sett wanted = Typed.read("SETT", sett, Sett::parse);
    return ledger().inExisting(studio -> {
      Resley resley = new Resley(studio);
      SettChange change = keep ? resley.keep(plan, wanted) : resley.tried(plan, wanted);
      out().println(ledger().json() ? GearJson.resleyed(plan, change, keep) : GearReport.resleyed(plan, change, keep));
      return ExitCode.DONE;
    });
  }
}
