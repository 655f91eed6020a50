package hankbook.store;

import static hankbook.store.schema.tables.GristSample.GRIST_SAMPLE;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.schema.tables.records.GristSampleRecord;
import hankbook.yarn.GristSample;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jooq.DSLContext;

/** The yarns' own grists, each by the sample last weighed; no sample is lost. */
public final class GristSamples {
  private final DSLContext sql;

  GristSamples(DSLContext sql) {
    this.sql = sql;
  }

  /** The sample that rules of each yarn that has one, by the yarn's name. */
  public Map<String, GristSample> all() {
    Map<String, GristSample> newest = new TreeMap<>();
    sql.selectFrom(GRIST_SAMPLE).orderBy(GRIST_SAMPLE.YARN, GRIST_SAMPLE.NUMBER).forEach(row -> sample(row).ifPresentOrElse(
        sample -> newest.put(row.getYarn(), sample), () -> newest.remove(row.getYarn())));
    return newest;
  }

  /** The sample that rules of a yarn. */
  public Optional<GristSample> of(String yarn) {
    return sql.selectFrom(GRIST_SAMPLE).where(GRIST_SAMPLE.YARN.eq(yarn)).orderBy(GRIST_SAMPLE.NUMBER.desc()).limit(1).fetchOptional().flatMap(GristSamples::sample);
  }

  /** Lets a sample rule from now on; none lets the yarn number rule again. */
  public void add(String yarn, Optional<GristSample> sample, String author, Instant now) {
    GristSampleRecord row = sql.newRecord(GRIST_SAMPLE);
    row.setYarn(yarn);
    row.setNumber(sql.fetchCount(GRIST_SAMPLE, GRIST_SAMPLE.YARN.eq(yarn)) + 1);
    row.setLengthTenths(sample.map(weighed -> weighed.length().tenthsOfMillimetre()).orElse(null));
    row.setMassMilligrams(sample.map(weighed -> weighed.mass().milligrams()).orElse(null));
    row.setDivisionMilligrams(sample.map(weighed -> weighed.division().milligrams()).orElse(null));
    row.setWithinTenths(sample.map(weighed -> weighed.within().tenthsOfMillimetre()).orElse(null));
    row.setAuthor(author);
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    row.insert();
  }

  private static Optional<GristSample> sample(GristSampleRecord row) {
    return Optional.ofNullable(row.getLengthTenths())
        .map(tenths -> new GristSample(new Length(tenths), new Mass(row.getMassMilligrams()), new Mass(row.getDivisionMilligrams()), new Length(row.getWithinTenths())));
  }
}
