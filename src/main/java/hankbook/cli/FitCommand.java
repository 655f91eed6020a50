package hankbook.cli;

import hankbook.allot.Fit;
import hankbook.exchange.AnswerFile;
import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Answer;
import hankbook.studio.NotDone;
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
  @Mixin private PlanAndStock asked;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return asked.print(spec.commandLine().getOut(), FitCommand::page);
  }

  private static String page(Answer answer, boolean json) throws BadInput {
    Fit fit = answer.fit();
    return json ? AnswerFile.write(answer.check(), fit, answer.stock(), answer.dues()) : FitReport.of(answer.check(), fit);
  }
}
