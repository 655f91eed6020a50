package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.reckon.Findings;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Enters a loom. */
@NullUnmarked
@Command(name = "add", description = "Enter a loom of the studio.", mixinStandardHelpOptions = true)
final class LoomAddCommand extends LedgerCommand {
  @Parameters(paramLabel = "NAME", description = "What it is called.")
  private String name;

  @Option(names = "--width", required = true, paramLabel = "LENGTH", description = "The widest warp it weaves, such as '90 cm'.")
  private String width;

  @Option(names = "--waste", required = true, paramLabel = "LENGTH", description = "Warp that it cannot weave, such as '60 cm'.")
  private String waste;

  @Option(names = "--shafts", required = true, paramLabel = "COUNT", description = "How many shafts it has.")
  private int shafts;

  @Option(names = "--replace", description = "Let it take the place of another loom of its name.")
  private boolean replace;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Loom loom = new Loom(name, Typed.read("--width", width, Length::parse), Typed.read("--waste", waste, Length::parse), shafts);
    return ledger().inExistingOrNew(studio -> {
      new Looms(studio).add(loom, replace);
      out().println(ledger().json() ? GearJson.looms(List.of(loom), Findings.NONE) : "Entered the loom " + loom.name() + ".");
      return ExitCode.DONE;
    });
  }
}
