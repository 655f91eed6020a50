package hankbook.store;

import static hankbook.store.schema.tables.Balance.BALANCE;

import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record4;
import org.jooq.impl.DSL;

/** How much of each skein is where, as kept beside the entries. */
public final class BalanceRows {
  private final DSLContext sql;

  BalanceRows(DSLContext sql) {
    this.sql = sql;
  }

  /** Everything, everywhere. */
  public Balances all() {
    return where(DSL.noCondition());
  }

  /** One skein. */
  public Balances ofSkein(String code) {
    return where(BALANCE.SKEIN.eq(code));
  }

  /** What of all skeins is at the places of a plan. */
  public Balances ofPlan(String plan) {
    return where(BALANCE.PLAN.eq(plan));
  }

  /** What of all skeins is on order. */
  public Balances onOrder() {
    return where(BALANCE.PLACE.eq(Place.Kind.ORDERED.name()).and(BALANCE.TENTHS.ne(0L)));
  }

  /** The skeins that came to be by winding yarn off others, and of which nothing else ever came or was found. */
  public Set<String> woundOnly() {
    hankbook.store.schema.tables.Balance came = BALANCE.as("came");
    return sql.select(BALANCE.SKEIN)
        .from(BALANCE)
        .where(BALANCE.PLACE.eq(Place.Kind.REWOUND.name()))
        .andNotExists(DSL.selectOne().from(came).where(came.SKEIN.eq(BALANCE.SKEIN), came.PLACE.in(Place.Kind.MAKER.name(), Place.Kind.RECOUNT.name())))
        .fetchSet(BALANCE.SKEIN);
  }

  private Balances where(Condition condition) {
    return new Balances(
        sql.select(BALANCE.SKEIN, BALANCE.PLACE, BALANCE.PLAN, BALANCE.TENTHS)
            .from(BALANCE)
            .where(condition)
            .fetchMap(BalanceRows::holding, row -> new Length(row.value4())));
  }

  private static Holding holding(Record4<String, String, String, Long> row) {
    try {
      return new Holding(row.value1(), Place.of(Place.Kind.valueOf(row.value2()), row.value3()));
    } catch (IllegalArgumentException changed) {
      throw new IllegibleBalance(row.value1(), changed);
    }
  }
}
