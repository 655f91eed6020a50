package hankbook.studio;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.exchange.TextFile;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.nio.file.Path;
import java.util.List;

/** Holds a plan file against a stock file, without a ledger. */
public final class CheckFiles {
  /**
   * What was read and what it comes to.
   *
   * @param stock every skein of the stock file
   * @param check the plan held against it
   */
  public record Answer(List<Skein> stock, PlanCheck check) {
    /** The most of the plan that the stock covers. */
    public Fit fit() {
      return Fit.of(check.plan(), stock);
    }
  }

  private CheckFiles() {}

  /**
   * Reads both files and checks the one against the other.
   *
   * @throws BadInput naming what cannot be read, or what does not add up
   */
  public static Answer check(Path planFile, Path stockFile) throws BadInput {
    Plan plan = PlanFile.read(planFile.toString(), TextFile.read(planFile));
    List<Skein> stock = StockFile.read(stockFile.toString(), TextFile.read(stockFile));
    try {
      return new Answer(stock, PlanCheck.of(plan, stock));
    } catch (Unreadable unreadable) {
      throw new BadInput(planFile + ": " + unreadable.getMessage());
    } catch (ArithmeticException overflow) {
      throw new BadInput(planFile + ": found numbers that make more than a ledger can hold, wanted smaller ones");
    }
  }
}
