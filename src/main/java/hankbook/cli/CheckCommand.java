package hankbook.cli;

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
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Does the stock cover the plan? */
@NullUnmarked
@Command(name = "check", description = "Does the stock cover the plan? By how much, and how surely?", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Mixin private PlanAndStock asked;

  @Option(names = "--why", description = "Also say what makes each yarn's metres unsure.")
  private boolean why;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return asked.print(spec.commandLine().getOut(), this::page);
  }

  private String page(Answer answer, boolean json) {
    if (json) {
      return AnswerFile.write(answer.check(), answer.stock(), answer.dues());
    }
    String page = CheckReport.of(answer.check());
    return why ? page + System.lineSeparator() + CheckReport.why(answer.check()) : page;
  }
}
