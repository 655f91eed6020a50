package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Return;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Puts back what the loom did not use. */
@NullUnmarked
@Command(name = "return", description = "Put some of a skein back on the shelf from the loom of a plan.", mixinStandardHelpOptions = true)
final class ReturnCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan of the ledger by its name.")
  private String plan;

  @Parameters(index = "1", paramLabel = "SKEIN", description = "The skein's code.")
  private String code;

  @Parameters(index = "2", paramLabel = "LENGTH", description = "How much, such as '12.5 m'.")
  private String length;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().entering(out(), studio -> new Return(studio).skein(UUID.randomUUID(), plan, code, Typed.read("LENGTH", length, Length::parse)).stream().toList());
  }
}
