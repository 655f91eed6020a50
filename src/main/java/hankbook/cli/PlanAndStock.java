package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.studio.Answer;
import hankbook.studio.CheckFiles;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words that commands on a plan file and a stock file share. */
@NullUnmarked
final class PlanAndStock {
  @Parameters(paramLabel = "PLAN.json", description = "The plan.")
  private Path plan;

  @Option(names = "--stock", required = true, paramLabel = "STOCK.csv", description = "The skeins on the shelf.")
  private Path stock;

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  boolean json() {
    return json;
  }

  Answer answer() throws BadInput {
    return CheckFiles.check(plan, stock);
  }

  /** What a check's outcome is to the shell. */
  static int exitCode(Answer answer) {
    return answer.check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
