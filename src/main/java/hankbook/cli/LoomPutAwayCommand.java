package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes a loom off the list. */
@NullUnmarked
@Command(name = "put-away", description = "Take a loom off the list.", mixinStandardHelpOptions = true)
final class LoomPutAwayCommand extends LedgerCommand {
  @Parameters(paramLabel = "NAME", description = "The loom.")
  private String name;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      new Looms(studio).putAway(name);
      out().println(ledger().json() ? GearJson.putAway("loom", name) : "Put the loom " + name + " away.");
      return ExitCode.DONE;
    });
  }
}
