package hankbook.cli;

import hankbook.exchange.OrderFile;
import hankbook.plan.Succession;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads an order back. */
@NullUnmarked
@Command(
    name = "order",
    description = {
      "Reads an order of ends or picks back in words and counts it.",
      "6 Chalk, 2 Woad      six threads of Chalk, then two of Woad",
      "12 x (6 Chalk, 2 Woad)      twelve times what is in the brackets",
      "there and back (6 Chalk, 2 Woad)      turns on the last: 6 Chalk, 2 Woad, 6 Chalk",
      "mirror (6 Chalk, 2 Woad)      the middle doubled: 6 Chalk, 2 Woad, 2 Woad, 6 Chalk"
    },
    mixinStandardHelpOptions = true)
final class OrderCommand implements Callable<Integer> {
  @Parameters(paramLabel = "TEXT", description = "The order, such as \"12 x (6 Chalk, 2 Woad), 6 Chalk\".")
  private String text;

  @Option(names = "--picks", description = "It is an order of picks.")
  private boolean picks;

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Succession order = Succession.parse(text);
    spec.commandLine().getOut().println(json ? OrderFile.write(order) : OrderReport.of(order, picks ? "picks" : "ends"));
    return ExitCode.DONE;
  }
}
