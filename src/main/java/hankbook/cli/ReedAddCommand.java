package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Reeds;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Enters a reed. */
@NullUnmarked
@Command(name = "add", description = "Enter a reed of the studio.", mixinStandardHelpOptions = true)
final class ReedAddCommand extends LedgerCommand {
  @Parameters(paramLabel = "DENTS", description = "Its dents, such as 12/in or '50/10 cm'.")
  private String dents;

  @Option(names = "--width", paramLabel = "LENGTH", description = "How wide it is, such as '90 cm'; without it, it takes any warp.")
  private String width;

  @Option(names = "--name", paramLabel = "NAME", description = "What it is called; without it, its dents are its name.")
  private String name;

  @Option(names = "--replace", description = "Let it take the place of another reed of its name.")
  private boolean replace;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Sett read = Typed.read("DENTS", dents, Reed::dents);
    Optional<Length> wide = width == null ? Optional.empty() : Optional.of(Typed.read("--width", width, Length::parse));
    Reed reed = new Reed(name == null ? read.toString() : name, read, wide);
    return ledger().inExistingOrNew(studio -> {
      new Reeds(studio).add(reed, replace);
      out().println(ledger().json() ? GearJson.reeds(List.of(reed)) : "Entered the reed " + reed.name() + ".");
      return ExitCode.DONE;
    });
  }
}
