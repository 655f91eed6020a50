package hankbook.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The desktop on a ledger of one's choice. */
@NullUnmarked
@Command(name = "open", description = "Open the desktop, on another ledger than your own where --ledger says so.", mixinStandardHelpOptions = true)
final class OpenCommand implements Callable<Integer> {
  @Mixin private LedgerChoice ledger;

  @ParentCommand private CommandLineProgram program;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Optional<String> whyNot = program.window().open(ledger.address(), ledger.author());
    whyNot.ifPresent(spec.commandLine().getErr()::println);
    return whyNot.isPresent() ? ExitCode.BAD_INPUT : ExitCode.DONE;
  }
}
