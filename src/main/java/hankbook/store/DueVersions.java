package hankbook.store;

import static hankbook.store.schema.tables.DueVersion.DUE_VERSION;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** When yarn that is on order is expected; no date that was ever kept is lost. */
public final class DueVersions {
  private final DSLContext sql;

  DueVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The date last kept of each skein that was ever on order, by its code. */
  public Map<String, LocalDate> newest() {
    Map<String, LocalDate> newest = new HashMap<>();
    sql.select(DUE_VERSION.SKEIN, DUE_VERSION.DUE)
        .from(DUE_VERSION)
        .orderBy(DUE_VERSION.SKEIN, DUE_VERSION.VERSION)
        .forEach(row -> newest.put(row.value1(), row.value2()));
    return newest;
  }

  /** The date last kept of a skein. */
  public Optional<LocalDate> newest(String skein) {
    return sql.select(DUE_VERSION.DUE)
        .from(DUE_VERSION)
        .where(DUE_VERSION.SKEIN.eq(skein))
        .orderBy(DUE_VERSION.VERSION.desc())
        .limit(1)
        .fetchOptional(DUE_VERSION.DUE);
  }

  /** Keeps the date of a skein, where it differs from the newest; says whether it did. */
  public boolean keep(String skein, LocalDate due, String author, Instant now) {
    if (newest(skein).filter(due::equals).isPresent()) {
      return false;
    }
    int last = sql.select(DSL.coalesce(DSL.max(DUE_VERSION.VERSION), 0)).from(DUE_VERSION).where(DUE_VERSION.SKEIN.eq(skein)).fetchSingle().value1();
    sql.insertInto(DUE_VERSION, DUE_VERSION.SKEIN, DUE_VERSION.VERSION, DUE_VERSION.DUE, DUE_VERSION.AUTHOR, DUE_VERSION.RECORDED_AT)
        .values(skein, last + 1, due, author, now.atOffset(ZoneOffset.UTC))
        .execute();
    return true;
  }
}
