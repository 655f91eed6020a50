package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.StockFile;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeavePlan;
import hankbook.exchange.WeaveUse;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.BringInDraft;
import hankbook.studio.DraftPreview;
import hankbook.studio.NotDone;
import hankbook.studio.Shelf;
import hankbook.studio.TextFile;
import hankbook.yarn.OneLine;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A draft that was drawn elsewhere. */
@NullUnmarked
@Command(
    name = "draft",
    description = "What is in a draft that was drawn elsewhere, and which yarns of the shelf come near its colours; with --plan, begins a plan of it.",
    mixinStandardHelpOptions = true)
final class DraftCommand extends LedgerCommand {
  @Parameters(paramLabel = "FILE.wif", description = "The draft, as a Weaving Information File 1.1.")
  private Path file;

  @Option(names = "--stock", paramLabel = "STOCK.csv", description = "The shelf, without a ledger.")
  private Path stock;

  @Option(names = "--yarn", paramLabel = "YARN", description = "Propose only colours of this yarn.")
  private String yarn;

  @Option(names = "--plan", paramLabel = "NAME", description = "Begin a plan of this name, in the ledger or, with --out, in a file.")
  private String plan;

  @Option(
      names = "--match",
      paramLabel = "COLOUR=YARN",
      description = "The yarn for a colour of the draft, by its letter or as it is shown: 'A=Skerry 16/2, Woad', or 'weft A=Skerry 16/2, Chalk' for one side alone. May be repeated.")
  private List<String> matches = new ArrayList<>();

  @Option(names = "--nearest", description = "Take the nearest yarn of the shelf for each colour that is not matched.")
  private boolean nearest;

  @Option(names = "--out", paramLabel = "PLAN.json", description = "Write the plan into a new file instead of the ledger.")
  private Path out;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    if (plan == null && (nearest || out != null || !matches.isEmpty())) {
      throw new BadInput("--plan: found nothing, wanted a name for the plan beside --match, --nearest and --out");
    }
    WeaveDraft draft = BringInDraft.read(file);
    List<Skein> shelf = shelf();
    DraftPreview preview = DraftPreview.of(draft, shelf, only(shelf));
    if (plan == null) {
      out().println(ledger().json() ? WeaveDraftJson.of(preview) : WeaveDraftReport.of(file.toString(), preview, shelf.isEmpty()));
      return ExitCode.DONE;
    }
    return begin(preview, shelf);
  }

  private int begin(DraftPreview preview, List<Skein> shelf) throws BadInput, NotDone, LedgerUnavailable {
    String name = OneLine.of(plan);
    if (name.isEmpty()) {
      throw new BadInput("--plan: found nothing, wanted a name for the plan");
    }
    Map<WeaveUse, YarnColour> chosen = new DraftMatches(preview, shelf).read(matches);
    Map<WeaveUse, YarnColour> yarns = nearest ? preview.withNearest(chosen) : chosen;
    List<WeaveUse> unmatched = preview.uses().stream().filter(use -> !yarns.containsKey(use)).toList();
    if (!unmatched.isEmpty()) {
      throw BegunPlanReport.unmatched(file.toString(), preview, unmatched, nearest);
    }
    PlanDraft begun = WeavePlan.of(preview.draft(), name, yarns);
    if (out != null) {
      BringInDraft.write(begun, out);
      return say(preview, begun, yarns, shelf);
    }
    return ledger().inExistingOrNew(studio -> {
      new BringInDraft(studio).keep(begun);
      return say(preview, begun, yarns, shelf);
    });
  }

  private int say(DraftPreview preview, PlanDraft begun, Map<WeaveUse, YarnColour> yarns, List<Skein> shelf) {
    Optional<Path> written = Optional.ofNullable(out);
    out().println(ledger().json() ? WeaveDraftJson.begun(begun, written) : BegunPlanReport.of(begun, written, preview, yarns, shelf));
    return ExitCode.DONE;
  }

  /** Without a stock file the ledger's; a draft can also be looked at where there is no shelf yet. */
  private List<Skein> shelf() throws BadInput, NotDone, LedgerUnavailable {
    if (stock != null) {
      return StockFile.read(stock.toString(), TextFile.read(stock));
    }
    List<Skein> skeins = new ArrayList<>();
    if (ledger().isThere() || !ledger().address().isEmpty()) {
      ledger().inExisting(studio -> {
        new Shelf(studio).skeins().forEach(held -> skeins.add(held.skein()));
        return ExitCode.DONE;
      });
    }
    return skeins;
  }

  private Optional<String> only(List<Skein> shelf) throws BadInput {
    if (yarn != null && shelf.stream().noneMatch(skein -> skein.yarn().yarn().equalsIgnoreCase(yarn.strip()))) {
      List<String> names = shelf.stream().map(skein -> skein.yarn().yarn()).distinct().sorted().toList();
      throw new BadInput("--yarn: found '" + yarn + "', wanted a yarn of the shelf" + (names.isEmpty() ? ", which is empty" : ": " + String.join(", ", names)));
    }
    return Optional.ofNullable(yarn).map(String::strip);
  }
}
