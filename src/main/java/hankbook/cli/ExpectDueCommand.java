package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.NotDone;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Yarn comes sooner or later than it was expected. */
@NullUnmarked
@Command(name = "due", description = "Expect skeins that are on order on another day.", mixinStandardHelpOptions = true)
final class ExpectDueCommand extends LedgerCommand {
  @Parameters(paramLabel = "CODE", arity = "1..*", description = "The skeins by their codes.")
  private List<String> codes;

  @Option(names = "--by", required = true, paramLabel = "DAY", description = "When they are expected now, such as 2026-12-20.")
  private String by;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    LocalDate due = Day.of("--by", by);
    return ledger().inExisting(studio -> {
      int changed = new Expect(studio).due(codes, due);
      out().println(ledger().json() ? ExpectedJson.changed(changed) : ExpectedReport.changed(changed, due));
      return ExitCode.DONE;
    });
  }
}
