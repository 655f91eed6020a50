package hankbook.store;

import static hankbook.store.schema.tables.LoomVersion.LOOM_VERSION;

import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.store.schema.tables.records.LoomVersionRecord;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** The looms of the studio; no version that was ever kept is lost. */
public final class LoomVersions {
  private final DSLContext sql;

  LoomVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The looms that are not put away, by name. */
  public List<Loom> all() {
    Map<String, LoomVersionRecord> newest = new LinkedHashMap<>();
    sql.selectFrom(LOOM_VERSION).orderBy(LOOM_VERSION.VERSION).forEach(row -> newest.put(row.getLoom(), row));
    return newest.values().stream().filter(row -> !row.getPutAway()).map(LoomVersions::loom).sorted(Comparator.comparing(Loom::name)).toList();
  }

  /** A loom that is not put away. */
  public Optional<Loom> find(String name) {
    return newest(name).filter(row -> !row.getPutAway()).map(LoomVersions::loom);
  }

  /** Keeps a loom as it is now, as its next version where it differs from the newest. */
  public void keep(Loom loom, boolean putAway, String author, Instant now) {
    Optional<LoomVersionRecord> newest = newest(loom.name());
    if (newest.filter(row -> loom(row).equals(loom) && row.getPutAway() == putAway).isPresent()) {
      return;
    }
    sql.insertInto(LOOM_VERSION)
        .set(LOOM_VERSION.LOOM, loom.name())
        .set(LOOM_VERSION.VERSION, newest.map(LoomVersionRecord::getVersion).orElse(0) + 1)
        .set(LOOM_VERSION.WIDTH_TENTHS, loom.width().tenthsOfMillimetre())
        .set(LOOM_VERSION.WASTE_TENTHS, loom.waste().tenthsOfMillimetre())
        .set(LOOM_VERSION.SHAFTS, loom.shafts())
        .set(LOOM_VERSION.PUT_AWAY, putAway)
        .set(LOOM_VERSION.AUTHOR, author)
        .set(LOOM_VERSION.RECORDED_AT, now.atOffset(ZoneOffset.UTC))
        .execute();
  }

  private Optional<LoomVersionRecord> newest(String name) {
    return sql.selectFrom(LOOM_VERSION).where(LOOM_VERSION.LOOM.eq(name)).orderBy(LOOM_VERSION.VERSION.desc()).limit(1).fetchOptional();
  }

  private static Loom loom(LoomVersionRecord row) {
    return new Loom(row.getLoom(), new Length(row.getWidthTenths()), new Length(row.getWasteTenths()), row.getShafts());
  }
}
