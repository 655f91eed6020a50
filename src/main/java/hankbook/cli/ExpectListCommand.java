package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.ExpectedSkein;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** What is on order. */
@NullUnmarked
@Command(name = "list", description = "The skeins on order, the earliest expected first.", mixinStandardHelpOptions = true)
final class ExpectListCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      List<ExpectedSkein> expected = new Expect(studio).all();
      out().println(ledger().json() ? ExpectedJson.list(expected, studio.today()) : ExpectedReport.list(expected, studio.today()));
      return ExitCode.DONE;
    });
  }
}
