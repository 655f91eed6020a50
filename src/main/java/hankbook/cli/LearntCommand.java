package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Weave;
import hankbook.measure.Unreadable;
import hankbook.reckon.Manner;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Learnt;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What was learnt from finished plans? */
@NullUnmarked
@Command(
    name = "learnt",
    description = "What finished plans teach: take-up, draw-in, shrinkage, loom waste, winding and times, with how far they scatter.",
    mixinStandardHelpOptions = true)
final class LearntCommand extends LedgerCommand {
  @Option(names = "--loom", paramLabel = "LOOM", description = "Only of cloths woven on it.")
  private String loom;

  @Option(names = "--weave", paramLabel = "WEAVE", description = "Only of cloths in it, such as plain or '2/2 twill'.")
  private String weave;

  @Option(names = "--fibre", paramLabel = "FIBRE", description = "Only of cloths whose warp is mostly of such fibres, such as wool or 'wool and silk'.")
  private String fibre;

  @Option(
      names = "--for",
      paramLabel = "PLAN",
      description = "What they propose for a plan of the ledger, beside what it says itself; loom, weave and fibre are the plan's own, where they are not given here.")
  private String plan;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Manner manner =
        new Manner(
            loom == null ? Optional.empty() : Optional.of(Typed.read("--loom", loom, LearntCommand::loom)),
            weave == null ? Optional.empty() : Optional.of(Typed.read("--weave", weave, Weave::parse)),
            fibre == null ? Set.of() : Typed.read("--fibre", fibre, LearntCommand::families));
    return ledger().inExisting(studio -> {
      out().println(plan == null ? found(studio, manner) : proposed(studio, manner));
      return ExitCode.DONE;
    });
  }

  private String found(Studio studio, Manner manner) {
    var findings = new Learnt(studio).all().within(manner);
    return ledger().json() ? LearntJson.findings(findings) : LearntReport.findings(findings, manner);
  }

  private String proposed(Studio studio, Manner manner) throws BadInput {
    Learnt.Proposal proposal = new Learnt(studio).forPlan(plan, manner);
    return ledger().json() ? LearntJson.proposal(proposal) : LearntReport.proposal(proposal);
  }

  private static String loom(String text) {
    String name = OneLine.of(text);
    if (name.isEmpty()) {
      throw new Unreadable(text, "the name of a loom");
    }
    return name;
  }

  private static Set<FibreFamily> families(String text) {
    Set<FibreFamily> families = FibreFamily.of(text);
    if (families.isEmpty()) {
      throw new Unreadable(text, "a fibre such as wool, silk, cotton, linen, viscose or acrylic");
    }
    return families;
  }
}
