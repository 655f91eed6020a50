package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says a purchase anew. */
@NullUnmarked
@Command(name = "correct", description = "Say a purchase anew, from a file; what was said before is kept.", mixinStandardHelpOptions = true)
final class PurchaseCorrectCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "NUMBER", description = "The purchase, by the number that purchase list shows.")
  private int number;

  @Parameters(index = "1", paramLabel = "FILE", description = "The purchase as it really was.")
  private Path file;

  @Option(names = "--reason", paramLabel = "TEXT", defaultValue = "", description = "Why.")
  private String reason;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Purchased purchased = new Purchases(studio).correct(number, file.toString(), TextFile.read(file), reason);
      out().println(ledger().json() ? PurchaseJson.one(purchased) : PurchaseReport.one(purchased));
      return ExitCode.DONE;
    });
  }
}
