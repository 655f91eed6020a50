package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Reeds;
import hankbook.studio.NotDone;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes a reed off the list. */
@NullUnmarked
@Command(name = "put-away", description = "Take a reed off the list.", mixinStandardHelpOptions = true)
final class ReedPutAwayCommand extends LedgerCommand {
  @Parameters(paramLabel = "NAME", description = "The reed.")
  private String name;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      new Reeds(studio).putAway(name);
      out().println(ledger().json() ? GearJson.putAway("reed", name) : "Put the reed " + name + " away.");
      return ExitCode.DONE;
    });
  }
}
