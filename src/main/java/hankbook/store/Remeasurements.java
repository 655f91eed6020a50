package hankbook.store;

import static hankbook.store.schema.tables.Entry.ENTRY;
import static hankbook.store.schema.tables.SkeinMeasure.SKEIN_MEASURE;

import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.store.schema.tables.records.SkeinMeasureRecord;
import hankbook.yarn.Measures;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** What skeins were measured to hold after they came. What belongs to an entry that was reversed no longer counts. */
public final class Remeasurements {
  private final DSLContext sql;

  Remeasurements(DSLContext sql) {
    this.sql = sql;
  }

  /** Of every skein that was measured again, the oldest first. */
  public Map<String, List<Remeasurement>> all() {
    return standing(DSL.noCondition()).stream().collect(Collectors.groupingBy(Remeasurement::skein));
  }

  /** Of one skein, the oldest first. */
  public List<Remeasurement> of(String skein) {
    return standing(SKEIN_MEASURE.SKEIN.eq(skein));
  }

  private List<Remeasurement> standing(Condition condition) {
    hankbook.store.schema.tables.Entry reversal = ENTRY.as("reversal");
    Condition reversed = DSL.exists(
        sql.selectOne().from(reversal).where(reversal.REVERSES.eq(SKEIN_MEASURE.ENTRY).or(reversal.REVERSES.eq(SKEIN_MEASURE.BESIDE))));
    Set<UUID> windings = sql.select(ENTRY.ID).from(ENTRY).where(ENTRY.KIND.eq(EntryKind.REWIND.name())).fetchSet(ENTRY.ID);
    return sql.selectFrom(SKEIN_MEASURE)
        .where(condition, DSL.not(reversed))
        .orderBy(SKEIN_MEASURE.SKEIN, SKEIN_MEASURE.NUMBER)
        .fetch(row -> remeasurement(row, windings));
  }

  /** Writes one down, whose entry is of this skein alone. */
  public void add(Remeasurement measured, String author, Instant now) {
    SkeinMeasureRecord row = row(measured, author, now);
    row.setEntry(measured.entry().orElse(null));
    row.insert();
  }

  /** Writes one down, whose entry may be of other skeins too. */
  public void addBeside(Remeasurement measured, String author, Instant now) {
    SkeinMeasureRecord row = row(measured, author, now);
    row.setBeside(measured.entry().orElse(null));
    row.insert();
  }

  private SkeinMeasureRecord row(Remeasurement measured, String author, Instant now) {
    SkeinMeasureRecord row = sql.newRecord(SKEIN_MEASURE);
    Optional<Turns> turns = measured.measures().turns();
    Optional<Weighing> weighing = measured.measures().weighing();
    row.setSkein(measured.skein());
    row.setNumber(sql.fetchCount(SKEIN_MEASURE, SKEIN_MEASURE.SKEIN.eq(measured.skein())) + 1);
    row.setFoundTenths(measured.found().tenthsOfMillimetre());
    row.setTurns(turns.map(Turns::count).orElse(null));
    row.setReelTenths(turns.map(counted -> counted.reel().tenthsOfMillimetre()).orElse(null));
    row.setGrossMilligrams(weighing.map(weighed -> weighed.gross().milligrams()).orElse(null));
    row.setTareMilligrams(weighing.map(weighed -> weighed.tare().milligrams()).orElse(null));
    row.setRegain(weighing.flatMap(Weighing::regain).map(Percentage::toString).orElse(null));
    row.setAuthor(author);
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    return row;
  }

  private static Remeasurement remeasurement(SkeinMeasureRecord row, Set<UUID> windings) {
    Optional<Turns> turns = Optional.ofNullable(row.getTurns()).map(count -> new Turns(count, new Length(row.getReelTenths())));
    Optional<Weighing> weighing = Optional.ofNullable(row.getGrossMilligrams())
        .map(gross -> new Weighing(new Mass(gross), new Mass(row.getTareMilligrams()), Optional.ofNullable(row.getRegain()).map(Percentage::parse)));
    Optional<UUID> entry = Optional.ofNullable(row.getEntry()).or(() -> Optional.ofNullable(row.getBeside()));
    boolean rewound = entry.filter(windings::contains).isPresent();
    return new Remeasurement(row.getSkein(), entry, new Length(row.getFoundTenths()), new Measures(Optional.empty(), turns, weighing), rewound);
  }
}
