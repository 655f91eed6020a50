package hankbook.store;

import static hankbook.store.schema.tables.ActualsEntry.ACTUALS_ENTRY;
import static hankbook.store.schema.tables.ActualsVersion.ACTUALS_VERSION;

import hankbook.store.schema.tables.records.ActualsVersionRecord;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** What was found after the cloths of plans were cut off; no version that was ever kept is lost. */
public final class ActualsVersions {
  private final DSLContext sql;

  private record Key(String plan, int number) {}

  ActualsVersions(DSLContext sql) {
    this.sql = sql;
  }

  /** The version that squares the book of a plan now, with the entries by which it does; empty where none did, or the last was taken back. */
  public Optional<ActualsVersion> standing(String plan) {
    return Optional.ofNullable(standing(ACTUALS_VERSION.PLAN.eq(plan)).get(plan));
  }

  /** The same of every plan, by name. */
  public Map<String, ActualsVersion> standing() {
    return standing(DSL.noCondition());
  }

  private Map<String, ActualsVersion> standing(Condition condition) {
    Map<String, ActualsVersion> last = new TreeMap<>();
    versions(condition.and(ACTUALS_VERSION.DEED.ne(ActualsVersion.Deed.DRAFT.name()))).forEach(version -> last.merge(version.plan(), version, ActualsVersions::later));
    last.values().removeIf(version -> version.deed() != ActualsVersion.Deed.SQUARED);
    return last;
  }

  private static ActualsVersion later(ActualsVersion before, ActualsVersion version) {
    boolean leaves = version.deed() == ActualsVersion.Deed.SQUARED && version.entries().isEmpty();
    return leaves ? version.withEntries(before.entries()) : version;
  }

  /** The entry by which the book of a plan that is squared was squared first, be it by a version before the one that stands. */
  public Optional<UUID> firstEntry(String plan) {
    Optional<UUID> first = Optional.empty();
    for (ActualsVersion version : versions(ACTUALS_VERSION.PLAN.eq(plan)).toList()) {
      switch (version.deed()) {
        case TAKEN_BACK -> first = Optional.empty();
        case SQUARED -> first = first.or(() -> version.entries().stream().findFirst());
        case DRAFT -> {}
      }
    }
    return first;
  }

  /** The draft that was kept of a plan since its book was last squared, or that was taken back; empty where none was. */
  public Optional<ActualsVersion> draft(String plan) {
    return versions(ACTUALS_VERSION.PLAN.eq(plan)).reduce((_, later) -> later).filter(version -> version.deed() == ActualsVersion.Deed.DRAFT);
  }

  /** The plans of which a draft was kept since, by name. */
  public Set<String> drafted() {
    return whose(DSL.noCondition(), ActualsVersion.Deed.DRAFT);
  }

  /** The plans whose book is squared now, by name. */
  public Set<String> squared() {
    return whose(ACTUALS_VERSION.DEED.ne(ActualsVersion.Deed.DRAFT.name()), ActualsVersion.Deed.SQUARED);
  }

  /** The plans of whose versions the last is of a deed. */
  private Set<String> whose(Condition versions, ActualsVersion.Deed deed) {
    Map<String, String> last = new TreeMap<>();
    sql.select(ACTUALS_VERSION.PLAN, ACTUALS_VERSION.DEED).from(ACTUALS_VERSION).where(versions).orderBy(ACTUALS_VERSION.PLAN, ACTUALS_VERSION.NUMBER)
        .forEach(version -> last.put(version.value1(), version.value2()));
    last.values().removeIf(of -> !of.equals(deed.name()));
    return last.keySet();
  }

  /** The version that an act made. */
  public Optional<ActualsVersion> of(UUID act) {
    return versions(ACTUALS_VERSION.ACT.eq(act)).findFirst();
  }

  /** The version that posted an entry; empty where the entry squared nothing. */
  public Optional<ActualsVersion> posting(UUID entry) {
    Condition posted = DSL.exists(sql.selectOne().from(ACTUALS_ENTRY).where(
        ACTUALS_ENTRY.ENTRY.eq(entry), ACTUALS_ENTRY.PLAN.eq(ACTUALS_VERSION.PLAN), ACTUALS_ENTRY.NUMBER.eq(ACTUALS_VERSION.NUMBER)));
    return sql.selectFrom(ACTUALS_VERSION).where(posted).fetchOptional(row -> version(row, List.of(entry)));
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
    Map<Key, List<UUID>> entries =
        sql.select(ACTUALS_ENTRY.PLAN, ACTUALS_ENTRY.NUMBER, ACTUALS_ENTRY.ENTRY)
            .from(ACTUALS_ENTRY)
            .join(ACTUALS_VERSION)
            .on(ACTUALS_ENTRY.PLAN.eq(ACTUALS_VERSION.PLAN), ACTUALS_ENTRY.NUMBER.eq(ACTUALS_VERSION.NUMBER))
            .where(condition)
            .orderBy(ACTUALS_ENTRY.PLAN, ACTUALS_ENTRY.NUMBER, ACTUALS_ENTRY.LINE)
            .collect(Collectors.groupingBy(row -> new Key(row.value1(), row.value2()), Collectors.mapping(row -> row.value3(), Collectors.toList())));
    return sql.selectFrom(ACTUALS_VERSION).where(condition).orderBy(ACTUALS_VERSION.PLAN, ACTUALS_VERSION.NUMBER).fetch().stream()
        .map(row -> version(row, entries.getOrDefault(new Key(row.getPlan(), row.getNumber()), List.of())));
  }

  private static ActualsVersion version(ActualsVersionRecord row, List<UUID> entries) {
    Integer planVersion = row.getPlanVersion();
    return new ActualsVersion(
        row.getPlan(), row.getNumber(), ActualsVersion.Deed.valueOf(row.getDeed()), Optional.ofNullable(row.getAct()),
        planVersion == null ? OptionalInt.empty() : OptionalInt.of(planVersion), row.getBody(), row.getReason(), entries, row.getAuthor(),
        row.getRecordedAt().toInstant());
  }
}
