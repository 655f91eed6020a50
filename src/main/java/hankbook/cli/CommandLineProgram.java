package hankbook.cli;

import hankbook.exchange.BadInput;
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
    subcommands = {CheckCommand.class, FitCommand.class})
public final class CommandLineProgram {
  /** Runs one command and says how it went, see {@link ExitCode}. */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new CommandLineProgram());
    line.setOut(out).setErr(err);
    line.setParameterExceptionHandler((problem, given) -> misused(problem, err));
    line.setExecutionExceptionHandler((problem, command, result) -> failed(problem, err));
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static int misused(ParameterException problem, PrintWriter err) {
    String usage = problem.getCommandLine().getCommandName();
    err.println(problem.getMessage() + ". See " + (usage.equals("hankbook") ? "--help" : usage + " --help") + ".");
    return ExitCode.BAD_INPUT;
  }

  private static int failed(Exception problem, PrintWriter err) {
    if (problem instanceof BadInput bad) {
      bad.faults().forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    err.println("Hankbook failed, and changed nothing: " + problem);
    return ExitCode.FAULT;
  }
}
