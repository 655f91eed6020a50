package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a plan into the ledger. */
@NullUnmarked
@Command(name = "add", description = "Take a plan from a file into the ledger.", mixinStandardHelpOptions = true)
final class PlanAddCommand extends LedgerCommand {
  @Parameters(paramLabel = "FILE.json", description = "The plan.")
  private Path file;

  @Option(names = "--replace", description = "Let it take the place of another plan of its name; the journal of its yarn stays.")
  private boolean replace;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExistingOrNew(studio -> {
      String name = new Plans(studio).add(file.toString(), TextFile.read(file), replace);
      out().println(ledger().json() ? LedgerJson.kept(name) : "Kept the plan " + name + ".");
      return ExitCode.DONE;
    });
  }
}
