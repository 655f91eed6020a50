package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Draw;
import hankbook.studio.NotDone;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes yarn onto the loom. */
@NullUnmarked
@Command(name = "draw", description = "Take all that is reserved for a plan onto its loom.", mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.entering(spec.commandLine().getOut(), studio -> new Draw(studio).plan(UUID.randomUUID(), plan).stream().toList());
  }
}
