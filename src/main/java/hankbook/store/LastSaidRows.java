package hankbook.store;

import static hankbook.store.schema.tables.ActualsEntry.ACTUALS_ENTRY;
import static hankbook.store.schema.tables.ActualsVersion.ACTUALS_VERSION;
import static hankbook.store.schema.tables.DueVersion.DUE_VERSION;
import static hankbook.store.schema.tables.GristSample.GRIST_SAMPLE;
import static hankbook.store.schema.tables.LoomVersion.LOOM_VERSION;
import static hankbook.store.schema.tables.PlanVersion.PLAN_VERSION;
import static hankbook.store.schema.tables.PurchaseVersion.PURCHASE_VERSION;
import static hankbook.store.schema.tables.ReedVersion.REED_VERSION;
import static hankbook.store.schema.tables.Setting.SETTING;
import static hankbook.store.schema.tables.SkeinMeasure.SKEIN_MEASURE;
import static hankbook.store.schema.tables.SkeinVersion.SKEIN_VERSION;
import static hankbook.store.schema.tables.TurnVersion.TURN_VERSION;

import hankbook.ledger.LastSaid;
import hankbook.ledger.LastSaid.What;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/** Looks through all that is kept as versions for what an author said last. */
final class LastSaidRows {
  private LastSaidRows() {}

  static Optional<LastSaid> by(String author, DSLContext sql) {
    return Stream.of(
            newest(sql, What.PLAN, PLAN_VERSION.PLAN, PLAN_VERSION.RECORDED_AT, PLAN_VERSION.AUTHOR.eq(author)),
            newest(sql, What.SETTING, SETTING.NAME, SETTING.RECORDED_AT, SETTING.AUTHOR.eq(author)),
            newest(sql, What.LOOM, LOOM_VERSION.LOOM, LOOM_VERSION.RECORDED_AT, LOOM_VERSION.AUTHOR.eq(author)),
            newest(sql, What.REED, REED_VERSION.REED, REED_VERSION.RECORDED_AT, REED_VERSION.AUTHOR.eq(author)),
            newest(sql, What.PURCHASE, PURCHASE_VERSION.PURCHASE, PURCHASE_VERSION.RECORDED_AT, PURCHASE_VERSION.AUTHOR.eq(author)),
            newest(sql, What.SKEIN, SKEIN_VERSION.SKEIN, SKEIN_VERSION.RECORDED_AT, SKEIN_VERSION.AUTHOR.eq(author)),
            newest(sql, What.MEASURE, SKEIN_MEASURE.SKEIN, SKEIN_MEASURE.RECORDED_AT, SKEIN_MEASURE.AUTHOR.eq(author).and(withoutEntry())),
            newest(sql, What.SAMPLE, GRIST_SAMPLE.YARN, GRIST_SAMPLE.RECORDED_AT, GRIST_SAMPLE.AUTHOR.eq(author)),
            // The first day is said with the entry that puts the skein on order.
            newest(sql, What.DUE, DUE_VERSION.SKEIN, DUE_VERSION.RECORDED_AT, DUE_VERSION.AUTHOR.eq(author).and(DUE_VERSION.VERSION.gt(1))),
            newest(sql, What.TURNS, TURN_VERSION.VERSION, TURN_VERSION.RECORDED_AT, TURN_VERSION.AUTHOR.eq(author)),
            newest(sql, What.ACTUALS, ACTUALS_VERSION.PLAN, ACTUALS_VERSION.RECORDED_AT, ACTUALS_VERSION.AUTHOR.eq(author).and(postedNothing())))
        .flatMap(Optional::stream)
        .max(Comparator.comparing(LastSaid::when));
  }

  private static Condition withoutEntry() {
    return SKEIN_MEASURE.ENTRY.isNull().and(SKEIN_MEASURE.BESIDE.isNull());
  }

  /** What is taken back posts reversals. */
  private static Condition postedNothing() {
    return ACTUALS_VERSION.DEED.ne(ActualsVersion.Deed.TAKEN_BACK.name())
        .andNotExists(DSL.selectOne().from(ACTUALS_ENTRY).where(ACTUALS_ENTRY.PLAN.eq(ACTUALS_VERSION.PLAN), ACTUALS_ENTRY.NUMBER.eq(ACTUALS_VERSION.NUMBER)));
  }

  private static Optional<LastSaid> newest(DSLContext sql, What what, TableField<?, ?> name, TableField<?, OffsetDateTime> when, Condition byAuthor) {
    return sql.select(name, when)
        .from(name.getTable())
        .where(byAuthor)
        .orderBy(when.desc())
        .limit(1)
        .fetchOptional(row -> new LastSaid(what, String.valueOf(row.value1()), row.value2().toInstant()));
  }
}
