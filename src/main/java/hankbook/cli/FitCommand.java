package hankbook.cli;

import hankbook.allot.Fit;
import hankbook.exchange.AnswerFile;
import hankbook.exchange.BadInput;
import hankbook.studio.Answer;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The question turned round: what does the stock cover? */
@NullUnmarked
@Command(name = "fit", description = "What is the most of this plan that the stock covers, and what must be bought?", mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {
  @Mixin private PlanAndStock files;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput {
    Answer answer = files.answer();
    PrintWriter out = spec.commandLine().getOut();
    Fit fit = answer.fit();
    out.println(files.json() ? AnswerFile.write(answer.check(), fit, answer.stock()) : FitReport.of(answer.check(), fit));
    return PlanAndStock.exitCode(answer);
  }
}
