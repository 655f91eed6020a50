package hankbook.store;

import static hankbook.store.schema.tables.LoomVersion.LOOM_VERSION;
import static hankbook.store.schema.tables.PlanVersion.PLAN_VERSION;
import static hankbook.store.schema.tables.PurchaseVersion.PURCHASE_VERSION;
import static hankbook.store.schema.tables.ReedVersion.REED_VERSION;
import static hankbook.store.schema.tables.Setting.SETTING;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.TableField;

/**
 * The last thing an author said that moves no yarn, and so is no entry.
 *
 * @param what of which sort it was
 * @param name of the plan, the setting, the loom or the reed, or the number of the purchase
 * @param when it was written down
 */
public record LastSaid(What what, String name, Instant when) {
  /** Of which sort. */
  public enum What {
    PLAN,
    SETTING,
    LOOM,
    REED,
    PURCHASE
  }

  static Optional<LastSaid> by(String author, DSLContext sql) {
    return Stream.of(
            newest(sql, What.PLAN, PLAN_VERSION.PLAN, PLAN_VERSION.RECORDED_AT, PLAN_VERSION.AUTHOR.eq(author)),
            newest(sql, What.SETTING, SETTING.NAME, SETTING.RECORDED_AT, SETTING.AUTHOR.eq(author)),
            newest(sql, What.LOOM, LOOM_VERSION.LOOM, LOOM_VERSION.RECORDED_AT, LOOM_VERSION.AUTHOR.eq(author)),
            newest(sql, What.REED, REED_VERSION.REED, REED_VERSION.RECORDED_AT, REED_VERSION.AUTHOR.eq(author)),
            newest(sql, What.PURCHASE, PURCHASE_VERSION.PURCHASE, PURCHASE_VERSION.RECORDED_AT, PURCHASE_VERSION.AUTHOR.eq(author)))
        .flatMap(Optional::stream)
        .max(Comparator.comparing(LastSaid::when));
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
