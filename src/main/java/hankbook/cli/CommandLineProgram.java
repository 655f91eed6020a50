package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import hankbook.store.LedgerSilent;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** Hankbook as a command. */
@Command(
    name = "hankbook",
    description = "Does the yarn on the shelf cover the plan?",
    mixinStandardHelpOptions = true,
    version = "Hankbook 0.1.0",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      OpenCommand.class,
      CheckCommand.class,
      ExplainCommand.class,
      FitCommand.class,
      CostCommand.class,
      CompareCommand.class,
      WindingCommand.class,
      ReceiveCommand.class,
      PurchaseCommand.class,
      ExpectCommand.class,
      ShelfCommand.class,
      PlanCommand.class,
      DraftCommand.class,
      OrderCommand.class,
      SectionsCommand.class,
      ReserveCommand.class,
      ReleaseCommand.class,
      DrawCommand.class,
      ReturnCommand.class,
      FinishCommand.class,
      RecountCommand.class,
      RewindCommand.class,
      DescribeCommand.class,
      PartWithCommand.class,
      RecordCommand.class,
      JournalCommand.class,
      ReverseCommand.class,
      UsedCommand.class,
      AuditCommand.class,
      ValueCommand.class,
      LoomCommand.class,
      ReedCommand.class,
      SettCommand.class,
      SleyCommand.class,
      ResleyCommand.class,
      GristCommand.class,
      SettingsCommand.class,
      LearntCommand.class,
    })
public final class CommandLineProgram {
  private final Window window;

  private CommandLineProgram(Window window) {
    this.window = window;
  }

  Window window() {
    return window;
  }

  /** Runs one command and says how it went, see {@link ExitCode}. */
  public static int run(String[] args, PrintWriter out, PrintWriter err, Window window) {
    CommandLine line = new CommandLine(new CommandLineProgram(window));
    line.setOut(out).setErr(err);
    line.setParameterExceptionHandler((problem, given) -> misused(problem, err));
    line.setExecutionExceptionHandler((problem, command, result) -> failed(problem, err));
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static int misused(ParameterException problem, PrintWriter err) {
    String usage = problem.getCommandLine().getCommandSpec().qualifiedName();
    err.println(problem.getMessage() + ". See " + usage + " --help.");
    return ExitCode.BAD_INPUT;
  }

  private static int failed(Exception problem, PrintWriter err) {
    switch (problem) {
      case BadInput bad -> bad.faults().forEach(err::println);
      case LedgerUnavailable unavailable -> err.println(unavailable.getMessage());
      case Unreadable unreadable -> err.println(unreadable.getMessage());
      case NotDone notDone -> {
        err.println(notDone.getMessage());
        return notDone.yarnIsShort() ? ExitCode.SHORT : ExitCode.BAD_INPUT;
      }
      case LedgerSilent silent -> {
        err.println(silent.message());
        return ExitCode.FAULT;
      }
      default -> {
        err.println("Hankbook failed: " + problem + ". The journal shows whether anything was written.");
        return ExitCode.FAULT;
      }
    }
    return ExitCode.BAD_INPUT;
  }
}
