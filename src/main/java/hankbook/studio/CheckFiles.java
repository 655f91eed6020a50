package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import java.nio.file.Path;

/** Holds a plan file against a stock file, without a ledger, and so with nothing set. */
public final class CheckFiles {
  private CheckFiles() {}

  /**
   * Reads both files and checks the one against the other.
   *
   * @throws BadInput naming what cannot be read, or what does not add up
   */
  public static Answer check(Path planFile, Path stockFile) throws BadInput {
    String source = planFile.toString();
    Means means = Means.of(StockFile.read(stockFile.toString(), TextFile.read(stockFile)));
    return Answer.of(source, PlanFile.read(source, TextFile.read(planFile)), means);
  }
}
