package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.PartWith;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes off what left the house. */
@NullUnmarked
@Command(name = "part", description = "Write off what was sold, given or lost of a skein.", mixinStandardHelpOptions = true)
final class PartWithCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "SKEIN", description = "The skein's code.")
  private String code;

  @Parameters(index = "1", paramLabel = "LENGTH", description = "How much, such as '120 m'.")
  private String length;

  @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What the journal should say of it.")
  private String note;

  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger.entering(spec.commandLine().getOut(), studio -> new PartWith(studio).skein(UUID.randomUUID(), code, Length.parse(length), note).stream().toList());
  }
}
