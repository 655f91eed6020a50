package hankbook.store;

import static hankbook.store.schema.tables.PurchaseLine.PURCHASE_LINE;
import static hankbook.store.schema.tables.PurchaseSkein.PURCHASE_SKEIN;

import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.PurchaseLine;
import hankbook.store.schema.tables.records.PurchaseLineRecord;
import hankbook.store.schema.tables.records.PurchaseSkeinRecord;
import hankbook.store.schema.tables.records.PurchaseVersionRecord;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.DSLContext;
import org.jooq.Result;

/** The lines of the versions of purchases, and the skeins they paid for. */
final class PurchaseLines {
  private final DSLContext sql;

  PurchaseLines(DSLContext sql) {
    this.sql = sql;
  }

  /** The lines of one version, in their order. */
  List<LandedLine> of(PurchaseVersionRecord version, CurrencyUnit carriage, CurrencyUnit duty) {
    CurrencyUnit home = CurrencyUnit.of(version.getHomeCurrency());
    Result<PurchaseSkeinRecord> skeins =
        sql.selectFrom(PURCHASE_SKEIN)
            .where(PURCHASE_SKEIN.PURCHASE.eq(version.getPurchase()), PURCHASE_SKEIN.VERSION.eq(version.getVersion()))
            .orderBy(PURCHASE_SKEIN.LINE, PURCHASE_SKEIN.TURN)
            .fetch();
    return sql.selectFrom(PURCHASE_LINE)
        .where(PURCHASE_LINE.PURCHASE.eq(version.getPurchase()), PURCHASE_LINE.VERSION.eq(version.getVersion()))
        .orderBy(PURCHASE_LINE.LINE)
        .fetch(row -> line(row, ofLine(row, skeins, home), CurrencyUnit.of(version.getCurrency()), carriage, duty));
  }

  private static List<LandedSkein> ofLine(PurchaseLineRecord line, List<PurchaseSkeinRecord> skeins, CurrencyUnit home) {
    return skeins.stream().filter(row -> row.getLine().equals(line.getLine())).map(row -> skein(row, home)).toList();
  }

  private static LandedLine line(PurchaseLineRecord row, List<LandedSkein> skeins, CurrencyUnit currency, CurrencyUnit carriage, CurrencyUnit duty) {
    PurchaseLine line = new PurchaseLine(row.getWords(), Money.ofMinor(currency, row.getPriceMinor()), skeins.stream().map(LandedSkein::skein).toList());
    return new LandedLine(
        line, Money.ofMinor(carriage, row.getCarriageMinor()), Money.ofMinor(duty, row.getDutyMinor()), Money.ofMinor(currency, row.getDiscountMinor()), skeins);
  }

  private static LandedSkein skein(PurchaseSkeinRecord row, CurrencyUnit home) {
    Optional<Money> before = Optional.ofNullable(row.getBeforeCurrency()).map(currency -> Money.ofMinor(CurrencyUnit.of(currency), row.getBeforeMinor()));
    return new LandedSkein(row.getSkein(), Money.ofMinor(home, row.getLandedMinor()), before);
  }

  /** Keeps the lines of a version that is kept already. */
  void keep(PurchaseVersionRecord version, List<LandedLine> lines) {
    int number = 0;
    for (LandedLine line : lines) {
      number++;
      PurchaseLineRecord row = sql.newRecord(PURCHASE_LINE);
      row.setPurchase(version.getPurchase());
      row.setVersion(version.getVersion());
      row.setLine(number);
      row.setWords(line.line().words());
      row.setPriceMinor(line.line().price().getAmountMinorLong());
      row.setCarriageMinor(line.carriage().getAmountMinorLong());
      row.setDutyMinor(line.duty().getAmountMinorLong());
      row.setDiscountMinor(line.discount().getAmountMinorLong());
      row.insert();
      keep(row, line);
    }
  }

  private void keep(PurchaseLineRecord line, LandedLine landed) {
    int turn = 0;
    for (LandedSkein skein : landed.skeins()) {
      turn++;
      PurchaseSkeinRecord row = sql.newRecord(PURCHASE_SKEIN);
      row.setPurchase(line.getPurchase());
      row.setVersion(line.getVersion());
      row.setLine(line.getLine());
      row.setTurn(turn);
      row.setSkein(skein.skein());
      row.setLandedMinor(skein.cost().getAmountMinorLong());
      row.setBeforeMinor(skein.before().map(Money::getAmountMinorLong).orElse(null));
      row.setBeforeCurrency(skein.before().map(before -> before.getCurrencyUnit().getCode()).orElse(null));
      row.insert();
    }
  }
}
