package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The invented studio that comes with the program: its shelf, its four plans, its looms and its reeds. */
public final class SampleStudio {
  private static final String STOCK = "stock.csv";
  private static final List<String> PLANS = List.of("quay-towels.json", "ash-blanket.json", "gorse-shawl.json", "linen-runner.json");

  private static final List<Loom> LOOMS =
      List.of(
          new Loom("Table loom", Length.parse("60 cm"), Length.parse("45 cm"), 4), new Loom("Window loom", Length.parse("120 cm"), Length.parse("70 cm"), 8));
  private static final List<Reed> REEDS = List.of(reed("12/in", "90 cm"), reed("40/10 cm", "120 cm"), reed("50/10 cm", "120 cm"));

  private SampleStudio() {}

  private static Reed reed(String dents, String width) {
    return new Reed(dents, Reed.dents(dents), Optional.of(Length.parse(width)));
  }

  /** How many skeins are on its shelf. */
  public static int skeins() {
    try {
      return StockFile.read(STOCK, text(STOCK)).size();
    } catch (BadInput broken) {
      throw new IllegalStateException("the sample studio cannot be read: " + broken.getMessage(), broken);
    }
  }

  /** How many plans it has. */
  public static int plans() {
    return PLANS.size();
  }

  /** Every sample plan held against the sample shelf. */
  public static List<PlanCheck> checks() {
    try {
      List<Skein> stock = StockFile.read(STOCK, text(STOCK));
      List<PlanCheck> checks = new ArrayList<>();
      for (String plan : PLANS) {
        checks.add(PlanCheck.of(PlanFile.read(plan, text(plan)), stock, Judgement.DEFAULT));
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
    LOOMS.forEach(loom -> session.looms().keep(loom, false, studio.author(), studio.now()));
    REEDS.forEach(reed -> session.reeds().keep(reed, false, studio.author(), studio.now()));
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
