package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PartWith;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes off what left the house. */
@NullUnmarked
@Command(name = "part", description = "Write off what was sold, given or lost of a skein.", mixinStandardHelpOptions = true)
final class PartWithCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "SKEIN", description = "The skein's code.")
  private String code;

  @Parameters(index = "1", paramLabel = "LENGTH", description = "How much, such as '120 m'.")
  private String length;

  @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What the journal should say of it.")
  private String note;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new PartWith(studio).skein(UUID.randomUUID(), code, Typed.read("LENGTH", length, Length::parse), note).stream().toList());
  }
}
