package hankbook.store;

import static hankbook.store.schema.tables.ActualsEntry.ACTUALS_ENTRY;
import static hankbook.store.schema.tables.ActualsVersion.ACTUALS_VERSION;

import hankbook.store.schema.tables.records.ActualsVersionRecord;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** What was found after the cloths of plans were cut off; no version that was ever kept is lost. */
public final class ActualsVersions {
  private final DSLContext sql;

  ActualsVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The version that squares the book of a plan now; empty where none did, or the last was taken back. */
  public Optional<ActualsVersion> standing(String plan) {
    return Optional.ofNullable(standing(ACTUALS_VERSION.PLAN.eq(plan)).get(plan));
  }

  /** The same of every plan, by name. */
  public Map<String, ActualsVersion> standing() {
    return standing(ACTUALS_VERSION.PLAN.isNotNull());
  }

  private Map<String, ActualsVersion> standing(Condition condition) {
    Map<String, ActualsVersion> last = new TreeMap<>();
    versions(condition.and(ACTUALS_VERSION.DEED.ne(ActualsVersion.Deed.DRAFT.name()))).forEach(version -> last.put(version.plan(), version));
    last.values().removeIf(version -> version.deed() != ActualsVersion.Deed.SQUARED);
    return last;
  }

  /** The draft that was kept of a plan since its book was last squared, or that was taken back; empty where none was. */
  public Optional<ActualsVersion> draft(String plan) {
    return versions(ACTUALS_VERSION.PLAN.eq(plan)).reduce((_, later) -> later).filter(version -> version.deed() == ActualsVersion.Deed.DRAFT);
  }

  /** The plans of which a draft was kept since, by name. */
  public List<String> drafted() {
    Map<String, ActualsVersion> last = new TreeMap<>();
    versions(ACTUALS_VERSION.PLAN.isNotNull()).forEach(version -> last.put(version.plan(), version));
    return last.values().stream().filter(version -> version.deed() == ActualsVersion.Deed.DRAFT).map(ActualsVersion::plan).toList();
  }

  /** The version that an act made. */
  public Optional<ActualsVersion> of(UUID act) {
    return versions(ACTUALS_VERSION.ACT.eq(act)).findFirst();
  }

  /** How many versions there are in all. */
  public int count() {
    return sql.fetchCount(ACTUALS_VERSION);
  }

  /** The number that the next version of a plan gets. */
  public int next(String plan) {
    return sql.fetchCount(ACTUALS_VERSION, ACTUALS_VERSION.PLAN.eq(plan)) + 1;
  }

  /** Writes a version down, after its entries were posted. */
  public void add(ActualsVersion version) {
    ActualsVersionRecord row = sql.newRecord(ACTUALS_VERSION);
    row.setPlan(version.plan());
    row.setNumber(version.number());
    row.setDeed(version.deed().name());
    row.setAct(version.act().orElse(null));
    row.setPlanVersion(version.planVersion().isPresent() ? version.planVersion().getAsInt() : null);
    row.setBody(version.body());
    row.setReason(version.reason());
    row.setAuthor(version.author());
    row.setRecordedAt(version.recorded().atOffset(ZoneOffset.UTC));
    row.insert();
    int line = 0;
    for (UUID entry : version.entries()) {
      line++;
      sql.insertInto(ACTUALS_ENTRY, ACTUALS_ENTRY.PLAN, ACTUALS_ENTRY.NUMBER, ACTUALS_ENTRY.LINE, ACTUALS_ENTRY.ENTRY)
          .values(version.plan(), version.number(), line, entry)
          .execute();
    }
  }

  private Stream<ActualsVersion> versions(Condition condition) {
    return sql.selectFrom(ACTUALS_VERSION).where(condition).orderBy(ACTUALS_VERSION.PLAN, ACTUALS_VERSION.NUMBER).fetch(this::version).stream();
  }

  private ActualsVersion version(ActualsVersionRecord row) {
    List<UUID> entries = sql.select(ACTUALS_ENTRY.ENTRY)
        .from(ACTUALS_ENTRY)
        .where(ACTUALS_ENTRY.PLAN.eq(row.getPlan()), ACTUALS_ENTRY.NUMBER.eq(row.getNumber()))
        .orderBy(ACTUALS_ENTRY.LINE)
        .fetch(ACTUALS_ENTRY.ENTRY);
    Integer planVersion = row.getPlanVersion();
    return new ActualsVersion(
        row.getPlan(), row.getNumber(), ActualsVersion.Deed.valueOf(row.getDeed()), Optional.ofNullable(row.getAct()),
        planVersion == null ? OptionalInt.empty() : OptionalInt.of(planVersion), row.getBody(), row.getReason(), entries, row.getAuthor(),
        row.getRecordedAt().toInstant());
  }
}
