package hankbook.cli;

import hankbook.allot.PlanBecause;
import hankbook.exchange.BadInput;
import hankbook.plan.Because;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Answer;
import hankbook.studio.NotDone;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Why the figures of a plan's answer are what they are. */
@NullUnmarked
@Command(name = "explain", description = "How are the figures of a plan reckoned, from its own values?", mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {
  @Mixin private PlanAndStock asked;

  @Parameters(index = "1", arity = "0..1", paramLabel = "FIGURE", description = "Only width, ends, warp, need, free, margin, uncertainty, risk or skeins.")
  private String figure;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    if (figure != null && !PlanBecause.NAMES.contains(figure)) {
      throw new BadInput("FIGURE: found '" + figure + "', wanted one of " + String.join(", ", PlanBecause.NAMES));
    }
    return asked.print(spec.commandLine().getOut(), this::page);
  }

  private String page(Answer answer, boolean json) {
    Map<String, List<Because>> figures = new LinkedHashMap<>(PlanBecause.of(answer.check(), answer.stock()));
    figures.keySet().removeIf(name -> figure != null && !name.equals(figure));
    return json ? BecauseJson.of(answer.check().plan().name(), figures) : BecauseReport.of(answer.check().plan().name(), figures);
  }
}
