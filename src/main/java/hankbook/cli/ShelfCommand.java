package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is in the house. */
@NullUnmarked
@Command(name = "shelf", description = "The skeins in the house: what is free, reserved and on a loom.", mixinStandardHelpOptions = true)
final class ShelfCommand implements Callable<Integer> {
  @Parameters(paramLabel = "WORD", arity = "0..*", description = "Only skeins of which every word is somewhere said.")
  private List<String> words = new ArrayList<>();

  @Option(names = "--all", description = "Also skeins that are used up.")
  private boolean all;

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.reading(studio -> {
      Shelf shelf = new Shelf(studio);
      List<ShelfSkein> skeins =
          (all ? shelf.everySkein() : shelf.skeins()).stream().filter(skein -> skein.mentions(String.join(" ", words))).toList();
      spec.commandLine().getOut().println(ledger.json() ? LedgerJson.shelf(skeins) : LedgerReport.shelf(skeins));
      return ExitCode.DONE;
    });
  }
}
