package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.NotDone;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Yarn was ordered. */
@NullUnmarked
@Command(name = "add", description = "Put the skeins of a stock file on order: all rows or none.", mixinStandardHelpOptions = true)
final class ExpectAddCommand extends LedgerCommand {
  @Option(names = "--csv", required = true, paramLabel = "FILE", description = "The skeins, as a stock file.")
  private Path file;

  @Option(names = "--by", required = true, paramLabel = "DAY", description = "When they are expected, such as 2026-12-20.")
  private String by;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    LocalDate due = Day.of("--by", by);
    return ledger().inExistingOrNew(studio -> {
      Expect.Ordered ordered = new Expect(studio).file(file.toString(), TextFile.read(file), due);
      out().println(ledger().json() ? ExpectedJson.ordered(ordered) : ExpectedReport.ordered(ordered, due));
      return ExitCode.DONE;
    });
  }
}
