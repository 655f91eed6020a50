package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Answer;
import hankbook.studio.CheckFiles;
import hankbook.studio.CheckPlan;
import hankbook.studio.ExpectedBy;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
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

  /** What is asked of two files, or of a plan of the ledger; gives the exit code. */
  interface Asked {
    int files(Path plan, Path stock) throws BadInput;

    int named(Studio studio, String plan, ExpectedBy by) throws BadInput, NotDone;
  }

  /** Asks of whichever was given. */
  int ask(Asked asked) throws BadInput, NotDone, LedgerUnavailable {
    ExpectedBy by = expected.expectedBy();
    if (stock != null && expected.isGiven()) {
      throw new BadInput("--count-expected: found it beside --stock, wanted a plan of the ledger, which knows what is on order");
    }
    if (stock != null) {
      return asked.files(Path.of(plan), stock);
    }
    if (plan.endsWith(".json") && Files.exists(Path.of(plan))) {
      throw new BadInput(plan + ": found a plan file without a stock, wanted --stock STOCK.csv, or a plan of the ledger by its name");
    }
    return ledger.inExisting(studio -> asked.named(studio, plan, by));
  }

  boolean json() {
    return ledger.json();
  }

  /** Prints a page on the answer, and says to the shell whether a yarn is short. */
  int print(PrintWriter out, Page page) throws BadInput, NotDone, LedgerUnavailable {
    return ask(new Asked() {
      @Override
      public int files(Path planFile, Path stockFile) throws BadInput {
        return print(out, page, CheckFiles.check(planFile, stockFile));
      }

      @Override
      public int named(Studio studio, String name, ExpectedBy by) throws BadInput {
        return print(out, page, new CheckPlan(studio).named(name, by));
      }
    });
  }

  private int print(PrintWriter out, Page page, Answer answer) throws BadInput {
    out.println(page.of(answer, ledger.json()));
    if (!ledger.json()) {
      ExpectedReport.counted(answer.counted()).forEach(out::println);
    }
    return answer.check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
