package hankbook.studio;

import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The invented studio that comes with the program: its shelf and its four plans. */
public final class SampleStudio {
  private static final String STOCK = "stock.csv";
  private static final List<String> PLANS = List.of("quay-towels.json", "ash-blanket.json", "gorse-shawl.json", "linen-runner.json");

  private SampleStudio() {}

  /** Every sample plan held against the sample shelf. */
  public static List<PlanCheck> checks() {
    try {
      List<Skein> stock = StockFile.read(STOCK, text(STOCK));
      List<PlanCheck> checks = new ArrayList<>();
      for (String plan : PLANS) {
        checks.add(PlanCheck.of(PlanFile.read(plan, text(plan)), stock));
      }
      return checks;
    } catch (BadInput broken) {
      throw new IllegalStateException("the sample studio cannot be read: " + broken.getMessage(), broken);
    }
  }

  /**
   * Puts the sample shelf and plans into a ledger.
   *
   * @throws NotDone if something in the ledger is in its way
   */
  public static void fill(Studio studio) throws NotDone {
    try {
      new Receive(studio).file(STOCK, text(STOCK));
      for (String plan : PLANS) {
        new Plans(studio).add(plan, text(plan), false);
      }
    } catch (BadInput inTheWay) {
      throw NotDone.because("The sample studio cannot be put beside what is here: " + inTheWay.getMessage());
    }
  }

  private static String text(String name) {
    try (InputStream in = SampleStudio.class.getResourceAsStream("/imports/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the sample file " + name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
