package hankbook.store;

import static hankbook.store.schema.tables.PlanVersion.PLAN_VERSION;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

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
  public Optional<PlanVersion> newest(String plan) {
    return sql.select(PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR)
        .from(PLAN_VERSION)
        .where(PLAN_VERSION.PLAN.eq(plan))
        .orderBy(PLAN_VERSION.VERSION.desc())
        .limit(1)
        .fetchOptional(row -> new PlanVersion(row.value1(), row.value2(), row.value3()));
  }

  /** One version of a plan. */
  public Optional<PlanVersion> numbered(String plan, int version) {
    return sql.select(PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR)
        .from(PLAN_VERSION)
        .where(PLAN_VERSION.PLAN.eq(plan), PLAN_VERSION.VERSION.eq(version))
        .fetchOptional(row -> new PlanVersion(row.value1(), row.value2(), row.value3()));
  }

  /** When a plan was kept first. */
  public Optional<Instant> begun(String plan) {
    return sql.select(PLAN_VERSION.RECORDED_AT).from(PLAN_VERSION).where(PLAN_VERSION.PLAN.eq(plan)).orderBy(PLAN_VERSION.VERSION).limit(1)
        .fetchOptional(row -> row.value1().toInstant());
  }

  /** A plan as it was at a moment. */
  public Optional<PlanVersion> at(String plan, Instant moment) {
    return sql.select(PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR)
        .from(PLAN_VERSION)
        .where(PLAN_VERSION.PLAN.eq(plan), PLAN_VERSION.RECORDED_AT.le(moment.atOffset(ZoneOffset.UTC)))
        .orderBy(PLAN_VERSION.VERSION.desc())
        .limit(1)
        .fetchOptional(row -> new PlanVersion(row.value1(), row.value2(), row.value3()));
  }

  /** Every plan as last kept, by name. */
  public Map<String, PlanVersion> allNewest() {
    hankbook.store.schema.tables.PlanVersion later = PLAN_VERSION.as("later");
    return sql.select(PLAN_VERSION.PLAN, PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR)
        .from(PLAN_VERSION)
        .where(DSL.notExists(sql.selectOne().from(later).where(later.PLAN.eq(PLAN_VERSION.PLAN), later.VERSION.gt(PLAN_VERSION.VERSION))))
        .fetchMap(PLAN_VERSION.PLAN, row -> new PlanVersion(row.value2(), row.value3(), row.value4()));
  }

  /** Keeps a plan, as its next version where it differs from the newest; gives the version that says so. */
  public int keep(String plan, String body, String author, Instant now) {
    Optional<PlanVersion> newest = newest(plan);
    if (newest.isPresent() && newest.get().body().equals(body)) {
      return newest.get().number();
    }
    int next = newest.map(PlanVersion::number).orElse(0) + 1;
    sql.insertInto(PLAN_VERSION, PLAN_VERSION.PLAN, PLAN_VERSION.VERSION, PLAN_VERSION.BODY, PLAN_VERSION.AUTHOR, PLAN_VERSION.RECORDED_AT)
        .values(plan, next, body, author, now.atOffset(ZoneOffset.UTC))
        .execute();
    return next;
  }
}
