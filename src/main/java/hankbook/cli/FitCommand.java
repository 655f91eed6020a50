package hankbook.cli;

import hankbook.allot.Fit;
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

/** The question turned round: what does the stock cover? */
@NullUnmarked
@Command(name = "fit", description = "What is the most of this plan that the stock covers, and what must be bought?", mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {
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
    Fit fit = answer.fit();
    out.println(json ? AnswerFile.write(answer.check(), fit, answer.stock()) : FitReport.of(answer.check(), fit));
    return answer.check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
