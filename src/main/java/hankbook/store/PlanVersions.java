package hankbook.store;

import static hankbook.store.schema.tables.PlanVersion.PLAN_VERSION;
import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.inline;
import static org.jooq.impl.DSL.max;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** The plans, as texts; no version that was ever kept is lost. */
public final class PlanVersions {
  private final DSLContext sql;

  PlanVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** Every plan's name, in order; put in order here, since each server has an order of its own. */
  public List<String> names() {
    return sql.selectDistinct(PLAN_VERSION.PLAN).from(PLAN_VERSION).fetch(PLAN_VERSION.PLAN).stream().sorted().toList();
  }

  /** A plan as last kept. */
  public Optional<String> newest(String plan) {
    return sql.select(PLAN_VERSION.BODY)
        .from(PLAN_VERSION)
        .where(PLAN_VERSION.PLAN.eq(plan))
        .orderBy(PLAN_VERSION.VERSION.desc())
        .limit(1)
        .fetchOptional(PLAN_VERSION.BODY);
  }

  /** Keeps a plan, as its next version where it differs from the newest. */
  public void keep(String plan, String body, String author, Instant now) {
    if (newest(plan).filter(body::equals).isPresent()) {
      return;
    }
    int versions = sql.select(coalesce(max(PLAN_VERSION.VERSION), inline(0))).from(PLAN_VERSION).where(PLAN_VERSION.PLAN.eq(plan)).fetchSingle().value1();
    sql.insertInto(PLAN_VERSION, PLAN_VERSION.PLAN, PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR, PLAN_VERSION.RECORDED_AT)
        .values(plan, versions + 1, body, author, now.atOffset(ZoneOffset.UTC))
        .execute();
  }
}
