package hankbook.cli;

import hankbook.exchange.AnswerFile;
import hankbook.exchange.BadInput;
import hankbook.studio.CheckFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Does the stock cover the plan? */
@NullUnmarked
@Command(name = "check", description = "Does the stock cover the plan? By how much, and how surely?", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN.json", description = "The plan.")
  private Path plan;

  @Option(names = "--stock", required = true, paramLabel = "STOCK.csv", description = "The skeins on the shelf.")
  private Path stock;

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput {
    CheckFiles.Answer answer = CheckFiles.check(plan, stock);
    PrintWriter out = spec.commandLine().getOut();
    out.println(json ? AnswerFile.write(answer.check(), answer.stock()) : CheckReport.of(answer.check()));
    return answer.check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
