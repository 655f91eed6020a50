package hankbook.studio;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
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
    Plan plan = PlanFile.read(planFile.toString(), text(planFile));
    List<Skein> stock = StockFile.read(stockFile.toString(), text(stockFile));
    try {
      return new Answer(stock, PlanCheck.of(plan, stock));
    } catch (Unreadable unreadable) {
      throw new BadInput(planFile + ": " + unreadable.getMessage());
    } catch (ArithmeticException overflow) {
      throw new BadInput(planFile + ": found numbers that make more than a ledger can hold, wanted smaller ones");
    }
  }

  private static String text(Path file) throws BadInput {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException notText) {
      throw new BadInput(file + ": found bytes that are not UTF-8, wanted a text file in UTF-8");
    } catch (IOException missing) {
      String found = Files.isDirectory(file) ? "a folder" : Files.exists(file) ? "a file that cannot be read" : "no such file";
      throw new BadInput(file + ": found " + found + ", wanted a file to read");
    }
  }
}
