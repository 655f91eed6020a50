package hankbook.cli;

import hankbook.exchange.ActualsFile;
import hankbook.exchange.BadInput;
import hankbook.reckon.Actuals;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Finish;
import hankbook.studio.FinishedPlans;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import hankbook.studio.TextFile;
import hankbook.yarn.OneLine;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Squares the book after a cloth was cut off. */
@NullUnmarked
@Command(
    name = "finish",
    description = "Square the book after a cloth was cut off: what came back, what went into samples and thrums, what was woven. The loom comes out empty.",
    mixinStandardHelpOptions = true)
final class FinishCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private What what;

  /** One of these is what is to be done. */
  static final class What {
    @ArgGroup(exclusive = false)
    private By by;

    @Option(names = "--take-back", required = true, paramLabel = "REASON", description = "Take back what finished it, so that its yarn is on the loom again.")
    private String takeBack;

    @Option(names = "--form", required = true, description = "Print an actuals file to fill in, with the skeins on its loom.")
    private boolean form;
  }

  /** Finishing it by what was found. */
  static final class By {
    @Option(names = "--actuals", required = true, paramLabel = "FILE.json", description = "What was found: leftovers, thrums, samples, warp, cloth, hours.")
    private Path actuals;

    @Option(names = "--preview", description = "Only show what would be posted.")
    private boolean preview;

    @Option(names = "--again", paramLabel = "REASON", description = "Take back what finished it before, and finish it anew.")
    private String again;

    @Option(names = "--reason", paramLabel = "REASON", description = "Why what cannot be explained is accepted as it is; otherwise as the file says.")
    private String reason;
  }

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Optional<Actuals> actuals = what.by == null ? Optional.empty() : Optional.of(actuals());
    return ledger().inExisting(studio -> {
      out().println(actuals.isPresent() ? finish(studio, actuals.get()) : what.form ? new FinishedPlans(studio).form(plan).form() : takenBack(studio));
      return ExitCode.DONE;
    });
  }

  private Actuals actuals() throws BadInput {
    Path file = what.by.actuals;
    ActualsFile read = ActualsFile.read(file.toString(), TextFile.read(file));
    if (read.plan().filter(of -> !of.equals(OneLine.of(plan))).isPresent()) {
      throw new BadInput(file + ", plan: found '" + read.plan().get() + "', wanted " + OneLine.of(plan) + ", or none");
    }
    return what.by.reason == null ? read.actuals() : read.actuals().because(what.by.reason.strip());
  }

  private String finish(Studio studio, Actuals actuals) throws BadInput, NotDone {
    Finish finish = new Finish(studio);
    if (what.by.preview) {
      var finishing = finish.preview(plan, actuals);
      return ledger().json() ? FinishJson.preview(finishing) : FinishReport.preview(finishing);
    }
    Finish.Finished finished =
        what.by.again == null ? finish.plan(UUID.randomUUID(), plan, actuals) : finish.again(UUID.randomUUID(), plan, actuals, what.by.again);
    return ledger().json() ? FinishJson.finished(finished) : FinishReport.finished(finished);
  }

  private String takenBack(Studio studio) throws NotDone {
    Finish.Finished back = new Finish(studio).takeBack(UUID.randomUUID(), plan, what.takeBack);
    return ledger().json() ? LedgerJson.entered(back.entered()) : LedgerReport.entered(back.entered());
  }
}
