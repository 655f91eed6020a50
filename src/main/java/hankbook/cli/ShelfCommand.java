package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Settings;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Doubts;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is in the house. */
@NullUnmarked
@Command(name = "shelf", description = "The skeins in the house: what is free, reserved and on a loom.", mixinStandardHelpOptions = true)
final class ShelfCommand extends LedgerCommand {
  @Parameters(paramLabel = "WORD", arity = "0..*", description = "Only skeins of which every word is somewhere said.")
  private List<String> words = new ArrayList<>();

  @Option(names = "--all", description = "Also skeins that are used up.")
  private boolean all;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Shelf shelf = new Shelf(studio);
      List<ShelfSkein> skeins =
          (all ? shelf.everySkein() : shelf.skeins()).stream().filter(skein -> skein.mentions(String.join(" ", words))).toList();
      Doubts doubts = new Settings(studio).judgement().doubts();
      out().println(ledger().json() ? LedgerJson.shelf(skeins, doubts) : LedgerReport.shelf(skeins, doubts));
      return ExitCode.DONE;
    });
  }
}
