package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Answer;
import hankbook.studio.CheckFiles;
import hankbook.studio.CheckPlan;
import hankbook.studio.ExpectedBy;
import hankbook.studio.NotDone;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words that commands on a plan and a stock share: two files, or a plan of the ledger. */
@NullUnmarked
final class PlanAndStock {
  @Parameters(paramLabel = "PLAN", description = "The plan: a file where --stock is given, else a plan of the ledger by its name.")
  private String plan;

  @Option(names = "--stock", paramLabel = "STOCK.csv", description = "The skeins on the shelf, without a ledger.")
  private Path stock;

  @Mixin private CountExpected expected;

  @Mixin private LedgerChoice ledger;

  /** What is printed of an answer. */
  interface Page {
    String of(Answer answer, boolean json) throws BadInput;
  }

  /** Prints a page on the answer, and says to the shell whether a yarn is short. */
  int print(PrintWriter out, Page page) throws BadInput, NotDone, LedgerUnavailable {
    ExpectedBy by = expected.expectedBy();
    if (stock != null && expected.isGiven()) {
      throw new BadInput("--count-expected: found it beside --stock, wanted a plan of the ledger, which knows what is on order");
    }
    if (stock != null) {
      return print(out, page, CheckFiles.check(Path.of(plan), stock));
    }
    if (plan.endsWith(".json") && Files.exists(Path.of(plan))) {
      throw new BadInput(plan + ": found a plan file without a stock, wanted --stock STOCK.csv, or a plan of the ledger by its name");
    }
    return ledger.inExisting(studio -> print(out, page, new CheckPlan(studio).named(plan, by)));
  }

  private int print(PrintWriter out, Page page, Answer answer) throws BadInput {
    out.println(page.of(answer, ledger.json()));
    if (!ledger.json()) {
      ExpectedReport.counted(answer.counted()).forEach(out::println);
    }
    return answer.check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
