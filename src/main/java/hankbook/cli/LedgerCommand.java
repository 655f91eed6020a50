package hankbook.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command on a ledger. */
@NullUnmarked
abstract class LedgerCommand implements Callable<Integer> {
  @Mixin private LedgerChoice ledger;

  @Spec private CommandSpec spec;

  final LedgerChoice ledger() {
    return ledger;
  }

  final PrintWriter out() {
    return spec.commandLine().getOut();
  }
}
