package hankbook.store;

import static hankbook.store.schema.tables.TurnVersion.TURN_VERSION;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** In which order plans take their yarn; no order that was ever kept is lost. */
public final class TurnVersions {
  private final DSLContext sql;

  TurnVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The plans' names in the order last kept; empty where none was. */
  public List<String> newest() {
    return sql.select(TURN_VERSION.PLAN).from(TURN_VERSION).where(TURN_VERSION.VERSION.eq(version())).orderBy(TURN_VERSION.TURN).fetch(TURN_VERSION.PLAN);
  }

  /** Keeps an order of plans, where it differs from the newest. */
  public void keep(List<String> plans, String author, Instant now) {
    if (newest().equals(plans)) {
      return;
    }
    int next = version() + 1;
    int turn = 0;
    for (String plan : plans) {
      turn++;
      sql.insertInto(TURN_VERSION, TURN_VERSION.VERSION, TURN_VERSION.TURN, TURN_VERSION.PLAN, TURN_VERSION.AUTHOR, TURN_VERSION.RECORDED_AT)
          .values(next, turn, plan, author, now.atOffset(ZoneOffset.UTC))
          .execute();
    }
  }

  private int version() {
    return sql.select(DSL.coalesce(DSL.max(TURN_VERSION.VERSION), 0)).from(TURN_VERSION).fetchSingle().value1();
  }
}
