package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.YarnWent;
import java.util.Locale;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Where did the yarn go? */
@NullUnmarked
@Command(
    name = "used",
    description = "Where did the yarn of a finished plan go? Planned against used, cause by cause, and what was really so of take-up, draw-in, shrinkage and waste.",
    mixinStandardHelpOptions = true)
final class UsedCommand extends LedgerCommand {
  @Parameters(paramLabel = "PLAN", description = "A finished plan of the ledger by its name.")
  private String plan;

  @Option(names = "--as", paramLabel = "VERSION", defaultValue = "reserved", description = "Which version of the plan: reserved, as its yarn was taken for it, or edited, as it was last edited.")
  private String as;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    YarnWent.Against against = against();
    return ledger().inExisting(studio -> {
      YarnWent.Went went = new YarnWent(studio).of(plan, against);
      out().println(ledger().json() ? UsedJson.of(went) : UsedReport.page(went));
      return ExitCode.DONE;
    });
  }

  private YarnWent.Against against() throws BadInput {
    return switch (as.strip().toLowerCase(Locale.ROOT)) {
      case "reserved" -> YarnWent.Against.RESERVED;
      case "edited" -> YarnWent.Against.EDITED;
      default -> throw new BadInput("--as: found '" + as + "', wanted reserved or edited");
    };
  }
}
