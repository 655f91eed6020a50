package hankbook.store;

import static hankbook.store.schema.tables.Entry.ENTRY;
import static hankbook.store.schema.tables.Transfer.TRANSFER;

import hankbook.ledger.EntryKind;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;

/** When yarn went to the plans' looms and came back, entries that were taken back aside. */
public final class LoomVisits {
  private final DSLContext sql;

  LoomVisits(DSLContext sql) {
    this.sql = sql;
  }

  /** The plans from whose loom yarn was put back since any last went there. */
  public Set<String> putBack() {
    Map<String, Long> drawn = last(EntryKind.DRAW, TRANSFER.TO_PLAN);
    Set<String> plans = new TreeSet<>();
    last(EntryKind.RETURN, TRANSFER.FROM_PLAN).forEach((plan, number) -> {
      if (number > drawn.getOrDefault(plan, 0L)) {
        plans.add(plan);
      }
    });
    return plans;
  }

  /** The number of each plan's last entry of a kind. */
  private Map<String, Long> last(EntryKind kind, Field<String> plan) {
    hankbook.store.schema.tables.Entry reversal = ENTRY.as("reversal");
    Field<Long> last = DSL.max(ENTRY.NUMBER);
    return sql.select(plan, last)
        .from(TRANSFER)
        .join(ENTRY)
        .on(TRANSFER.ENTRY.eq(ENTRY.ID))
        .where(ENTRY.KIND.eq(kind.name()), DSL.notExists(sql.selectOne().from(reversal).where(reversal.REVERSES.eq(ENTRY.ID))))
        .groupBy(plan)
        .fetchMap(plan, last);
  }
}
