package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Reed;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Reeds;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** The reeds of the studio. */
@NullUnmarked
@Command(name = "list", description = "The reeds of the studio.", mixinStandardHelpOptions = true)
final class ReedListCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      List<Reed> reeds = new Reeds(studio).all();
      out().println(ledger().json() ? GearJson.reeds(reeds) : GearReport.reeds(reeds));
      return ExitCode.DONE;
    });
  }
}
