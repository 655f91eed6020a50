package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.ledger.Balances;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.print.ClothRecord;
import hankbook.print.RecordSheet;
import hankbook.print.SheetPdf;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The record of a finished plan as one page to print and keep. */
public final class PlanRecord {
  private final Studio studio;

  public PlanRecord(Studio studio) {
    this.studio = studio;
  }

  /**
   * The page as a PDF file's content.
   *
   * @throws BadInput if there is no such plan, or what was found does not go with it
   * @throws NotDone if it was not finished
   */
  public byte[] page(String plan) throws BadInput, NotDone {
    return SheetPdf.of(RecordSheet.of(cloth(OneLine.of(plan))));
  }

  /**
   * Writes the page to a file that is not there yet.
   *
   * @throws BadInput also if it is there, or cannot be written
   * @throws NotDone if the plan was not finished
   */
  public void write(String plan, Path file) throws BadInput, NotDone {
    FreshFile.write(file, page(plan));
  }

  /** What stands on it. */
  ClothRecord cloth(String plan) throws BadInput, NotDone {
    YarnWent.Went went = new YarnWent(studio).of(plan, YarnWent.Against.RESERVED);
    FinishedPlan finished = went.finished();
    return studio.read(session -> new ClothRecord(
        plan, went.made().actuals().date().orElse(studio.today()), finished.author(), went.made(), went.reckoning(), gave(session, plan), CostMeans.of(session, plan).spent(),
        studio.today()));
  }

  private static List<ClothRecord.Gave> gave(Session session, String plan) {
    Balances balances = session.balances().all();
    return session.skeins().all().stream()
        .map(skein -> new ClothRecord.Gave(skein.code(), skein.yarn(), skein.hex(), skein.lot(), taken(balances, plan, skein.code())))
        .filter(gave -> gave.length().isPositive())
        .toList();
  }

  private static Length taken(Balances balances, String plan, String code) {
    return Stream.of(new Place.Cloth(plan), new Place.Thrums(plan), new Place.Sample(plan)).map(place -> balances.at(code, place)).reduce(Length.ZERO, Length::plus);
  }
}
