package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.JsonText;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PlanRecord;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what is remembered of a cloth. */
@NullUnmarked
@Command(name = "record", description = "Write the record of a finished plan as a PDF page to print and keep.", mixinStandardHelpOptions = true)
final class RecordCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A finished plan of the ledger by its name.")
  private String plan;

  @Option(names = "--out", required = true, paramLabel = "FILE.pdf", description = "The file to write; one that is there already is kept.")
  private Path file;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      new PlanRecord(studio).write(plan, file);
      out().println(ledger().json() ? JsonText.of(JsonText.object().put("plan", plan).put("written", file.toString())) : "Written: " + file);
      return ExitCode.DONE;
    });
  }
}
