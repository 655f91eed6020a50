package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Recount;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts the book right after a weighing. */
@NullUnmarked
@Command(name = "recount", description = "Put the book right: the whole skein was measured again, with what is reserved of it and without what is on a loom.", mixinStandardHelpOptions = true)
final class RecountCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "SKEIN", description = "The skein's code.")
  private String code;

  @Parameters(index = "1", paramLabel = "LENGTH", description = "What there is of it, such as '120 m'.")
  private String found;

  @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What the journal should say of it.")
  private String note;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Recount(studio).skein(UUID.randomUUID(), code, Length.parse(found), note).stream().toList());
  }
}
