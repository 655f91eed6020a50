package hankbook.store;

import static hankbook.store.schema.tables.SkeinVersion.SKEIN_VERSION;

import hankbook.measure.YarnNumber;
import hankbook.store.schema.tables.records.SkeinVersionRecord;
import hankbook.yarn.Skein;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.DSLContext;

/** What was said of skeins since they were written down, each version the whole of it; no version that was ever kept is lost. */
final class SkeinVersions {
  private final DSLContext sql;

  SkeinVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The skein as it was written down and as each version describes it, the newest last. */
  List<Skein> of(Skein written) {
    List<Skein> all = new ArrayList<>(List.of(written));
    sql.selectFrom(SKEIN_VERSION)
        .where(SKEIN_VERSION.SKEIN.eq(written.code()))
        .orderBy(SKEIN_VERSION.VERSION)
        .forEach(row -> all.add(described(written, row)));
    return all;
  }

  /** What the newest version makes of each skein that has one, by its code. */
  Map<String, UnaryOperator<Skein>> newest() {
    Map<String, UnaryOperator<Skein>> newest = new HashMap<>();
    sql.selectFrom(SKEIN_VERSION).orderBy(SKEIN_VERSION.SKEIN, SKEIN_VERSION.VERSION).forEach(row -> newest.put(row.getSkein(), written -> described(written, row)));
    return newest;
  }

  /** How many versions there are in all. */
  int count() {
    return sql.fetchCount(SKEIN_VERSION);
  }

  /** Keeps the next version of a skein. */
  void keep(Skein skein, String author, Instant now) {
    SkeinVersionRecord row = sql.newRecord(SKEIN_VERSION);
    row.setSkein(skein.code());
    row.setVersion(sql.fetchCount(SKEIN_VERSION, SKEIN_VERSION.SKEIN.eq(skein.code())) + 1);
    row.setHex(skein.hex());
    row.setFibre(skein.fibre());
    row.setGrist(skein.grist().map(YarnNumber::toString).orElse(null));
    row.setLot(skein.lot());
    row.setLocation(skein.location());
    row.setCostMinor(skein.cost().map(Money::getAmountMinorLong).orElse(null));
    row.setCurrency(skein.cost().map(cost -> cost.getCurrencyUnit().getCode()).orElse(null));
    row.setReceived(skein.received().orElse(null));
    row.setAuthor(author);
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    row.insert();
  }

  /** The one skein, with what a version can say taken from the other. */
  static Skein described(Skein one, Skein other) {
    return new Skein(
        one.code(), one.yarn(), other.hex(), other.fibre(), other.grist(), one.form(), one.label(), one.turns(), one.weighing(), one.opened(),
        other.lot(), other.location(), other.cost(), other.received(), one.kept(), one.sample());
  }

  private static Skein described(Skein written, SkeinVersionRecord row) {
    return new Skein(
        written.code(), written.yarn(), row.getHex(), row.getFibre(), Optional.ofNullable(row.getGrist()).map(YarnNumber::parse), written.form(),
        written.label(), written.turns(), written.weighing(), written.opened(), row.getLot(), row.getLocation(),
        Optional.ofNullable(row.getCurrency()).map(currency -> Money.ofMinor(CurrencyUnit.of(currency), row.getCostMinor())),
        Optional.ofNullable(row.getReceived()), written.kept(), written.sample());
  }
}
