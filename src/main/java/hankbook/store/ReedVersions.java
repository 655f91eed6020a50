package hankbook.store;

import static hankbook.store.schema.tables.ReedVersion.REED_VERSION;

import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.store.schema.tables.records.ReedVersionRecord;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** The reeds of the studio; no version that was ever kept is lost. */
public final class ReedVersions {
  private final DSLContext sql;

  ReedVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The reeds that are not put away, by name. */
  public List<Reed> all() {
    Map<String, ReedVersionRecord> newest = new LinkedHashMap<>();
    sql.selectFrom(REED_VERSION).orderBy(REED_VERSION.VERSION).forEach(row -> newest.put(row.getReed(), row));
    return newest.values().stream().filter(row -> !row.getPutAway()).map(ReedVersions::reed).sorted(Comparator.comparing(Reed::name)).toList();
  }

  /** A reed that is not put away. */
  public Optional<Reed> find(String name) {
    return newest(name).filter(row -> !row.getPutAway()).map(ReedVersions::reed);
  }

  /** Keeps a reed as it is now, as its next version where it differs from the newest. */
  public void keep(Reed reed, boolean putAway, String author, Instant now) {
    Optional<ReedVersionRecord> newest = newest(reed.name());
    if (newest.filter(row -> reed(row).equals(reed) && row.getPutAway() == putAway).isPresent()) {
      return;
    }
    sql.insertInto(REED_VERSION)
        .set(REED_VERSION.REED, reed.name())
        .set(REED_VERSION.VERSION, newest.map(ReedVersionRecord::getVersion).orElse(0) + 1)
        .set(REED_VERSION.DENTS, reed.dents().toString())
        .set(REED_VERSION.WIDTH_TENTHS, reed.width().map(Length::tenthsOfMillimetre).orElse(null))
        .set(REED_VERSION.PUT_AWAY, putAway)
        .set(REED_VERSION.AUTHOR, author)
        .set(REED_VERSION.RECORDED_AT, now.atOffset(ZoneOffset.UTC))
        .execute();
  }

  private Optional<ReedVersionRecord> newest(String name) {
    return sql.selectFrom(REED_VERSION).where(REED_VERSION.REED.eq(name)).orderBy(REED_VERSION.VERSION.desc()).limit(1).fetchOptional();
  }

  private static Reed reed(ReedVersionRecord row) {
    return new Reed(row.getReed(), Reed.dents(row.getDents()), Optional.ofNullable(row.getWidthTenths()).map(Length::new));
  }
}
