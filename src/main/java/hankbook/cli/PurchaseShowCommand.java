package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.PurchaseFile;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows one purchase. */
@NullUnmarked
@Command(name = "show", description = "A purchase line by line: its shares of carriage, duty and discount, and what each skein, a metre and a kilogram cost.", mixinStandardHelpOptions = true)
final class PurchaseShowCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "NUMBER", description = "The purchase, by the number that purchase list shows.")
  private int number;

  @Option(names = "--as-file", description = "Print it as a purchase file, which can be edited for purchase correct.")
  private boolean asFile;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Purchased purchased = new Purchases(studio).numbered(number);
      out().println(asFile ? PurchaseFile.write(purchased.kept().landed().purchase()) : ledger().json() ? PurchaseJson.one(purchased) : PurchaseReport.one(purchased));
      return ExitCode.DONE;
    });
  }
}
