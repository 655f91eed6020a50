package hankbook.store;

import static hankbook.store.schema.tables.Skein.SKEIN;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.YarnNumber;
import hankbook.store.schema.tables.records.SkeinRecord;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.DSLContext;

/** The skeins as they came and as they were described since; what is left of one is for the balances to say. */
public final class SkeinRows {
  private final DSLContext sql;
  private final SkeinVersions versions;

  SkeinRows(DSLContext sql) {
    this.sql = sql;
    versions = new SkeinVersions(sql);
  }

  /** The skein with a code, as it was last described. */
  public Optional<Skein> find(String code) {
    return written(code).map(skein -> versions.of(skein).getLast());
  }

  /** A skein as it was written down and as it was described each time since, the newest last; empty where there is none. */
  public List<Skein> history(String code) {
    return written(code).map(versions::of).orElse(List.of());
  }

  /** Whether it is just as the skein with its code was written down or described at any time. */
  public boolean wasEver(Skein skein) {
    return written(skein.code()).filter(there -> versions.of(there).contains(skein)).isPresent();
  }

  /** How often anything was said of skeins after they were written down. */
  public int descriptions() {
    return versions.count();
  }

  /** Whether anything was said of it after it was written down. */
  public boolean wasDescribed(String code) {
    return written(code).filter(there -> versions.of(there).size() > 1).isPresent();
  }

  /**
   * Keeps what is said of a skein beside its yarn and its measures, where it differs from what was last said; says whether it did.
   *
   * @param skein one that is written down, as it is described now
   */
  public boolean describe(Skein skein, String author, Instant now) {
    Skein before = find(skein.code()).orElseThrow();
    Skein after = SkeinVersions.described(before, skein);
    if (after.equals(before)) {
      return false;
    }
    versions.keep(after, author, now);
    return true;
  }

  private Optional<Skein> written(String code) {
    return sql.selectFrom(SKEIN).where(SKEIN.CODE.eq(code)).fetchOptional(SkeinRows::skein);
  }

  /** Whether there never was one. */
  public boolean isEmpty() {
    return !sql.fetchExists(SKEIN);
  }

  /** Every skein there ever was, by code; put in order here, since each server has an order of its own. */
  public List<Skein> all() {
    Map<String, UnaryOperator<Skein>> newest = versions.newest();
    return sql.selectFrom(SKEIN).fetch(SkeinRows::skein).stream()
        .map(skein -> newest.getOrDefault(skein.code(), UnaryOperator.identity()).apply(skein))
        .sorted(Comparator.comparing(Skein::code))
        .toList();
  }

  /** Writes down a skein whose code is not taken. */
  public void add(Skein skein, Instant now) {
    SkeinRecord row = sql.newRecord(SKEIN);
    row.setCode(skein.code());
    row.setYarn(skein.yarn().yarn());
    row.setColour(skein.yarn().colour());
    row.setHex(skein.hex());
    row.setFibre(skein.fibre());
    row.setGrist(skein.grist().map(YarnNumber::toString).orElse(null));
    row.setForm(skein.form().name());
    row.setLabelTenths(skein.label().map(Length::tenthsOfMillimetre).orElse(null));
    row.setGrossMilligrams(skein.weighing().map(weighing -> weighing.gross().milligrams()).orElse(null));
    row.setTareMilligrams(skein.weighing().map(weighing -> weighing.tare().milligrams()).orElse(null));
    row.setTurns(skein.turns().map(Turns::count).orElse(null));
    row.setReelTenths(skein.turns().map(turns -> turns.reel().tenthsOfMillimetre()).orElse(null));
    row.setRegain(skein.weighing().flatMap(Weighing::regain).map(Percentage::toString).orElse(null));
    row.setOpened(skein.opened());
    row.setLot(skein.lot());
    row.setLocation(skein.location());
    row.setCostMinor(skein.cost().map(Money::getAmountMinorLong).orElse(null));
    row.setCurrency(skein.cost().map(cost -> cost.getCurrencyUnit().getCode()).orElse(null));
    row.setReceived(skein.received().orElse(null));
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    row.insert();
  }

  private static Skein skein(SkeinRecord row) {
    return new Skein(
        row.getCode(),
        new YarnColour(row.getYarn(), row.getColour()),
        row.getHex(),
        row.getFibre(),
        Optional.ofNullable(row.getGrist()).map(YarnNumber::parse),
        PackageForm.valueOf(row.getForm()),
        Optional.ofNullable(row.getLabelTenths()).map(Length::new),
        Optional.ofNullable(row.getTurns()).map(count -> new Turns(count, new Length(row.getReelTenths()))),
        Optional.ofNullable(row.getGrossMilligrams())
            .map(gross -> new Weighing(new Mass(gross), new Mass(row.getTareMilligrams()), Optional.ofNullable(row.getRegain()).map(Percentage::parse))),
        row.getOpened(),
        row.getLot(),
        row.getLocation(),
        Optional.ofNullable(row.getCurrency()).map(currency -> Money.ofMinor(CurrencyUnit.of(currency), row.getCostMinor())),
        Optional.ofNullable(row.getReceived()),
        Optional.empty(),
        Optional.empty());
  }
}
