package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Loom;
import hankbook.reckon.Findings;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Learnt;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** The looms of the studio. */
@NullUnmarked
@Command(name = "list", description = "The looms of the studio.", mixinStandardHelpOptions = true)
final class LoomListCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      List<Loom> looms = new Looms(studio).all();
      Findings learnt = new Learnt(studio).all();
      out().println(ledger().json() ? GearJson.looms(looms, learnt) : GearReport.looms(looms, learnt));
      return ExitCode.DONE;
    });
  }
}
