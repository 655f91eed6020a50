package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a purchase back. */
@NullUnmarked
@Command(name = "take-back", description = "Take a purchase back: its skeins cost again what was said before it. It stays in the list, marked.", mixinStandardHelpOptions = true)
final class PurchaseTakeBackCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "NUMBER", description = "The purchase, by the number that purchase list shows.")
  private int number;

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
  private String reason;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Purchased purchased = new Purchases(studio).takeBack(number, reason);
      out().println(ledger().json() ? PurchaseJson.one(purchased) : PurchaseReport.one(purchased));
      return ExitCode.DONE;
    });
  }
}
