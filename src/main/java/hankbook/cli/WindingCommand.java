package hankbook.cli;

import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.exchange.BadInput;
import hankbook.exchange.WindingFile;
import hankbook.exchange.WindingText;
import hankbook.plan.Bout;
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

/** What to have beside the warping board. */
@NullUnmarked
@Command(
    name = "winding",
    description = "The winding sheet of a plan: passes in the order of the warp, which skein feeds which thread, bouts, and what is wound in all.",
    mixinStandardHelpOptions = true)
final class WindingCommand implements Callable<Integer> {
  @Mixin private PlanAndStock asked;

  @Option(names = "--threads", paramLabel = "K", description = "Threads held together; without it, those of the plan.")
  private Integer threads;

  @Option(names = "--across", description = "Hold the threads that come next in the order of the warp, of whatever yarns.")
  private boolean across;

  @Option(names = "--bout", paramLabel = "N", defaultValue = "" + Bout.USUAL, description = "The most ends of a bout (${DEFAULT-VALUE}).")
  private int bout;

  @Option(names = "--group", paramLabel = "N", defaultValue = "" + WindingWish.USUAL_GROUP, description = "Ends to a group of the counting thread (${DEFAULT-VALUE}).")
  private int group;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return asked.print(spec.commandLine().getOut(), this::page);
  }

  private String page(Answer answer, boolean json) throws BadInput {
    int held = threads == null ? answer.check().plan().threads() : threads;
    WindingSheet sheet = answer.winding(new WindingWish(held, across, bout, group));
    return json ? WindingFile.write(sheet) : WindingText.of(sheet, answer.check().plan().threads());
  }
}
