package hankbook.studio;

import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.store.Session;
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
   * Puts the sample shelf and plans into a blank ledger.
   *
   * @throws NotDone if the ledger is not blank: invented yarn does not belong beside real yarn
   */
  public static void fill(Studio studio) throws NotDone {
    try {
      studio.write(session -> fill(studio, session));
    } catch (BadInput broken) {
      throw new IllegalStateException("the sample studio cannot be read: " + broken.getMessage(), broken);
    }
  }

  private static int fill(Studio studio, Session session) throws NotDone, BadInput {
    if (!Studio.isBlank(session)) {
      throw NotDone.because("This ledger is not blank; the sample studio belongs in a ledger of its own.");
    }
    Plans plans = new Plans(studio);
    for (String plan : PLANS) {
      String text = text(plan);
      plans.keep(session, PlanFile.read(plan, text).name(), text);
    }
    return new Receive(studio).receive(session, STOCK, StockFile.rows(STOCK, text(STOCK))).received();
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
