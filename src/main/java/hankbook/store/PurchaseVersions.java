package hankbook.store;

import static hankbook.store.schema.tables.PurchaseSkein.PURCHASE_SKEIN;
import static hankbook.store.schema.tables.PurchaseVersion.PURCHASE_VERSION;

import hankbook.cost.Basis;
import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedLine;
import hankbook.cost.LandedPurchase;
import hankbook.cost.Purchase;
import hankbook.store.schema.tables.records.PurchaseVersionRecord;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** What was paid, as the bills say; no version of a purchase that was ever kept is lost. */
public final class PurchaseVersions {
  private final DSLContext sql;
  private final PurchaseLines lines;

  PurchaseVersions(DSLContext sql) {
    this.sql = sql;
    lines = new PurchaseLines(sql);
  }

  /** Every purchase as it was last said, by number; also those that were taken back. */
  public List<KeptPurchase> all() {
    return newest(DSL.noCondition());
  }

  /** The purchase with a number, as it was last said. */
  public Optional<KeptPurchase> numbered(int number) {
    return newest(PURCHASE_VERSION.PURCHASE.eq(number)).stream().findFirst();
  }

  /** The purchase that stands and paid for a skein. */
  public Optional<KeptPurchase> thatPaidFor(String skein) {
    Condition everPaid = PURCHASE_VERSION.PURCHASE.in(DSL.select(PURCHASE_SKEIN.PURCHASE).from(PURCHASE_SKEIN).where(PURCHASE_SKEIN.SKEIN.eq(skein)));
    return newest(everPaid).stream().filter(kept -> kept.stands() && kept.landed().purchase().skeins().contains(skein)).findFirst();
  }

  /** The number that the next purchase gets. */
  public int next() {
    return sql.select(DSL.coalesce(DSL.max(PURCHASE_VERSION.PURCHASE), 0)).from(PURCHASE_VERSION).fetchSingle().value1() + 1;
  }

  private List<KeptPurchase> newest(Condition condition) {
    hankbook.store.schema.tables.PurchaseVersion later = PURCHASE_VERSION.as("later");
    Condition isNewest =
        DSL.notExists(sql.selectOne().from(later).where(later.PURCHASE.eq(PURCHASE_VERSION.PURCHASE), later.VERSION.gt(PURCHASE_VERSION.VERSION)));
    return sql.selectFrom(PURCHASE_VERSION).where(condition, isNewest).orderBy(PURCHASE_VERSION.PURCHASE).fetch(this::kept);
  }

  private KeptPurchase kept(PurchaseVersionRecord row) {
    CurrencyUnit currency = CurrencyUnit.of(row.getCurrency());
    Charge carriage = charge(row.getCarriageCurrency(), row.getCarriageMinor(), row.getCarriageBy());
    Charge duty = charge(row.getDutyCurrency(), row.getDutyMinor(), row.getDutyBy());
    Charge discount = charge(row.getCurrency(), row.getDiscountMinor(), row.getDiscountBy());
    Optional<ExchangeRate> rate = Optional.ofNullable(row.getRate()).map(text -> new ExchangeRate(new BigDecimal(text), row.getRateDay()));
    List<LandedLine> landed = lines.of(row, carriage.amount().getCurrencyUnit(), duty.amount().getCurrencyUnit());
    Purchase purchase =
        new Purchase(row.getDated(), row.getSeller(), currency, landed.stream().map(LandedLine::line).toList(), carriage, duty, discount, rate);
    return new KeptPurchase(
        row.getPurchase(), row.getVersion(), new LandedPurchase(purchase, landed), row.getStands(), row.getReason(), row.getAuthor(), row.getRecordedAt().toInstant());
  }

  private static Charge charge(String currency, long minor, String basis) {
    return new Charge(Money.ofMinor(CurrencyUnit.of(currency), minor), Basis.valueOf(basis));
  }

  /**
   * Keeps the next version of a purchase.
   *
   * @param stands false where it is taken back
   * @param reason why; may be empty
   */
  public void keep(int number, LandedPurchase landed, boolean stands, String reason, String author, Instant now) {
    Purchase purchase = landed.purchase();
    PurchaseVersionRecord row = sql.newRecord(PURCHASE_VERSION);
    row.setPurchase(number);
    row.setVersion(sql.fetchCount(PURCHASE_VERSION, PURCHASE_VERSION.PURCHASE.eq(number)) + 1);
    row.setDated(purchase.date());
    row.setSeller(purchase.from());
    row.setCurrency(purchase.currency().getCode());
    row.setCarriageMinor(purchase.carriage().amount().getAmountMinorLong());
    row.setCarriageCurrency(purchase.carriage().amount().getCurrencyUnit().getCode());
    row.setCarriageBy(purchase.carriage().basis().name());
    row.setDutyMinor(purchase.duty().amount().getAmountMinorLong());
    row.setDutyCurrency(purchase.duty().amount().getCurrencyUnit().getCode());
    row.setDutyBy(purchase.duty().basis().name());
    row.setDiscountMinor(purchase.discount().amount().getAmountMinorLong());
    row.setDiscountBy(purchase.discount().basis().name());
    row.setRate(purchase.rate().map(ExchangeRate::text).orElse(null));
    row.setRateDay(purchase.rate().map(ExchangeRate::day).orElse(null));
    row.setHomeCurrency(landed.home().getCode());
    row.setStands(stands);
    row.setReason(reason);
    row.setAuthor(author);
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    row.insert();
    lines.keep(row, landed.lines());
  }
}
