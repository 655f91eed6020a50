package hankbook.store;

import static hankbook.store.schema.tables.Balance.BALANCE;
import static hankbook.store.schema.tables.ChainEnd.CHAIN_END;
import static hankbook.store.schema.tables.Entry.ENTRY;
import static hankbook.store.schema.tables.Transfer.TRANSFER;

import hankbook.ledger.Chain;
import hankbook.ledger.ChainEnd;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Known;
import hankbook.ledger.Place;
import hankbook.ledger.Refusal;
import hankbook.ledger.Rules;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.schema.tables.records.ChainEndRecord;
import hankbook.store.schema.tables.records.EntryRecord;
import hankbook.store.schema.tables.records.TransferRecord;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Result;
import org.jooq.impl.DSL;

/** What was done, and the only way to do more. */
public final class Entries implements Known {
  private static final int FEW = 5000;

  private final DSLContext sql;

  Entries(DSLContext sql) {
    this.sql = sql;
  }

  /**
   * Takes one more entry; empty where the very same was there already.
   *
   * @throws EntryRefused if it breaks a rule
   */
  public Optional<ChainedEntry> post(Entry entry, Instant now) {
    Optional<Refusal> refusal = Rules.refusal(entry, this);
    if (refusal.isPresent()) {
      throw new EntryRefused(refusal.get());
    }
    if (entry(entry.id()).isPresent()) {
      return Optional.empty();
    }
    ChainEndRecord end = sql.selectFrom(CHAIN_END).fetchSingle();
    ChainedEntry link = Chain.link(end.getEntries() + 1, entry, end.getLastHash());
    insert(link, now);
    end.setEntries(link.number());
    end.setLastHash(link.hash());
    end.update();
    return Optional.of(link);
  }

  private void insert(ChainedEntry link, Instant now) {
    Entry entry = link.entry();
    EntryRecord row = sql.newRecord(ENTRY);
    row.setId(entry.id());
    row.setNumber(link.number());
    row.setKind(entry.kind().name());
    row.setDated(entry.date());
    row.setAuthor(entry.author());
    row.setNote(entry.note());
    row.setReverses(entry.reverses().orElse(null));
    row.setPreviousHash(link.previousHash());
    row.setHash(link.hash());
    row.setRecordedAt(now.atOffset(ZoneOffset.UTC));
    row.insert();
    int line = 0;
    for (Transfer transfer : entry.transfers()) {
      line++;
      insert(entry.id(), line, transfer);
    }
  }

  private void insert(UUID entry, int line, Transfer transfer) {
    TransferRecord row = sql.newRecord(TRANSFER);
    row.setEntry(entry);
    row.setLine(line);
    row.setSkein(transfer.skein());
    row.setFromPlace(transfer.from().kind().name());
    row.setFromPlan(transfer.from().planName());
    row.setToPlace(transfer.to().kind().name());
    row.setToPlan(transfer.to().planName());
    row.setTenths(transfer.length().tenthsOfMillimetre());
    row.insert();
  }

  /** Where the chain ends, as it is kept beside it. */
  public ChainEnd end() {
    return sql.selectFrom(CHAIN_END).fetchSingle(row -> new ChainEnd(row.getEntries(), row.getLastHash()));
  }

  /** Every entry, first to last. */
  public List<ChainedEntry> chain() {
    return recorded(DSL.noCondition()).stream().map(RecordedEntry::chained).toList();
  }

  /** Every entry and when it was written down, first to last. */
  public List<RecordedEntry> all() {
    return recorded(DSL.noCondition());
  }

  /** The entry with a number, which is its place in the chain. */
  public Optional<RecordedEntry> numbered(long number) {
    return recorded(ENTRY.NUMBER.eq(number)).stream().findFirst();
  }

  /** The entries with some numbers, first to last. */
  public List<RecordedEntry> numbered(Collection<Long> numbers) {
    return recorded(ENTRY.NUMBER.in(numbers));
  }

  /** The entries from one number to another, first to last. */
  public List<RecordedEntry> between(long first, long last) {
    return recorded(ENTRY.NUMBER.between(first, last));
  }

  /** Every entry that moves a skein, first to last. */
  public List<RecordedEntry> ofSkein(String code) {
    return recorded(ENTRY.ID.in(DSL.select(TRANSFER.ENTRY).from(TRANSFER).where(TRANSFER.SKEIN.eq(code))));
  }

  /** For each of some entries that was taken back, by number: the number of the entry that did so. */
  public Map<Long, Long> takenBackBy(Collection<Long> numbers) {
    hankbook.store.schema.tables.Entry reversal = ENTRY.as("reversal");
    return sql.select(ENTRY.NUMBER, reversal.NUMBER)
        .from(ENTRY)
        .join(reversal)
        .on(reversal.REVERSES.eq(ENTRY.ID))
        .where(ENTRY.NUMBER.in(numbers))
        .fetchMap(ENTRY.NUMBER, reversal.NUMBER);
  }

  /** For each of some entries that takes another back, by number: the number of that other. */
  public Map<Long, Long> takesBack(Collection<Long> numbers) {
    hankbook.store.schema.tables.Entry reversal = ENTRY.as("reversal");
    return sql.select(reversal.NUMBER, ENTRY.NUMBER)
        .from(reversal)
        .join(ENTRY)
        .on(reversal.REVERSES.eq(ENTRY.ID))
        .where(reversal.NUMBER.in(numbers))
        .fetchMap(reversal.NUMBER, ENTRY.NUMBER);
  }

  /**
   * The newest entry of an author that was not taken back.
   *
   * @param but ids of entries that are passed over
   */
  public Optional<RecordedEntry> newestStanding(String author, Collection<UUID> but) {
    hankbook.store.schema.tables.Entry reversal = ENTRY.as("reversal");
    return sql.select(ENTRY.NUMBER)
        .from(ENTRY)
        .where(ENTRY.AUTHOR.eq(author), ENTRY.ID.notIn(but))
        .andNotExists(DSL.selectOne().from(reversal).where(reversal.REVERSES.eq(ENTRY.ID)))
        .orderBy(ENTRY.NUMBER.desc())
        .limit(1)
        .fetchOptional(ENTRY.NUMBER)
        .flatMap(this::numbered);
  }

  @Override
  public Optional<Entry> entry(UUID id) {
    return recorded(ENTRY.ID.eq(id)).stream().findFirst().map(found -> found.chained().entry());
  }

  /** The entry that put a skein on order and was not taken back. */
  public Optional<Entry> expecting(String skein) {
    Condition ofSkein = ENTRY.ID.in(DSL.select(TRANSFER.ENTRY).from(TRANSFER).where(TRANSFER.SKEIN.eq(skein), TRANSFER.TO_PLACE.eq(Place.Kind.ORDERED.name())));
    return recorded(ENTRY.KIND.eq(EntryKind.EXPECT.name()).and(ofSkein)).stream().map(RecordedEntry::entry).filter(entry -> !isReversed(entry.id())).findFirst();
  }

  /** Every entry that moves yarn of a plan, first to last. */
  public List<RecordedEntry> ofPlan(String plan) {
    return recorded(ENTRY.ID.in(DSL.select(TRANSFER.ENTRY).from(TRANSFER).where(TRANSFER.FROM_PLAN.eq(plan).or(TRANSFER.TO_PLAN.eq(plan)))));
  }

  /** An entry and all that came after it, first to last. */
  public List<RecordedEntry> since(UUID id) {
    return recorded(ENTRY.NUMBER.ge(DSL.select(ENTRY.NUMBER).from(ENTRY).where(ENTRY.ID.eq(id))));
  }

  /** What makes an entry hold: itself, or where it was taken back and brought back, what brought it back last; empty where it does not hold. */
  public Optional<Entry> standing(UUID id) {
    Optional<Entry> last = entry(id);
    boolean stands = true;
    for (Optional<Entry> by = reversalOf(id); by.isPresent(); by = reversalOf(by.get().id())) {
      last = by;
      stands = !stands;
    }
    return stands ? last : Optional.empty();
  }

  /** The entry that takes another back. */
  public Optional<Entry> reversalOf(UUID id) {
    return recorded(ENTRY.REVERSES.eq(id)).stream().findFirst().map(RecordedEntry::entry);
  }

  @Override
  public boolean isReversed(UUID id) {
    return sql.fetchExists(ENTRY, ENTRY.REVERSES.eq(id));
  }

  @Override
  public Length balance(Holding holding) {
    return sql.select(BALANCE.TENTHS)
        .from(BALANCE)
        .where(BALANCE.SKEIN.eq(holding.skein()), BALANCE.PLACE.eq(holding.place().kind().name()), BALANCE.PLAN.eq(holding.place().planName()))
        .fetchOptional(row -> new Length(row.value1()))
        .orElse(Length.ZERO);
  }

  private List<RecordedEntry> recorded(Condition condition) {
    Result<EntryRecord> entries = sql.selectFrom(ENTRY).where(condition).orderBy(ENTRY.NUMBER).fetch();
    Map<UUID, Result<TransferRecord>> transfers = entries.size() <= FEW ? transfers(entries.getValues(ENTRY.ID)) : transfers(condition);
    return entries.map(row -> legible(row, of(row.getId(), transfers)));
  }

  private Map<UUID, Result<TransferRecord>> transfers(Condition condition) {
    return sql.select(TRANSFER.fields())
        .from(TRANSFER)
        .join(ENTRY)
        .on(TRANSFER.ENTRY.eq(ENTRY.ID))
        .where(condition)
        .orderBy(TRANSFER.ENTRY, TRANSFER.LINE)
        .fetchInto(TRANSFER)
        .intoGroups(TRANSFER.ENTRY);
  }

  /** H2 would look through all transfers for those of a few entries, were they not named. */
  private Map<UUID, Result<TransferRecord>> transfers(List<UUID> entries) {
    return entries.isEmpty() ? Map.of() : sql.selectFrom(TRANSFER).where(TRANSFER.ENTRY.in(entries)).orderBy(TRANSFER.ENTRY, TRANSFER.LINE).fetchGroups(TRANSFER.ENTRY);
  }

  private static List<TransferRecord> of(UUID entry, Map<UUID, Result<TransferRecord>> transfers) {
    Result<TransferRecord> found = transfers.get(entry);
    return found == null ? List.of() : found;
  }

  private static RecordedEntry legible(EntryRecord row, List<TransferRecord> transfers) {
    try {
      return entry(row, transfers.stream().map(Entries::transfer).toList());
    } catch (IllegalArgumentException changed) {
      throw new IllegibleEntry(row.getNumber(), row.getId(), changed);
    }
  }

  private static RecordedEntry entry(EntryRecord row, List<Transfer> transfers) {
    Entry entry =
        new Entry(
            row.getId(), EntryKind.valueOf(row.getKind()), row.getDated(), row.getAuthor(), row.getNote(), transfers, Optional.ofNullable(row.getReverses()));
    ChainedEntry chained = new ChainedEntry(row.getNumber(), entry, row.getPreviousHash(), row.getHash());
    return new RecordedEntry(chained, row.getRecordedAt().toInstant());
  }

  private static Transfer transfer(TransferRecord row) {
    Place from = Place.of(Place.Kind.valueOf(row.getFromPlace()), row.getFromPlan());
    Place to = Place.of(Place.Kind.valueOf(row.getToPlace()), row.getToPlan());
    return new Transfer(row.getSkein(), from, to, new Length(row.getTenths()));
  }
}
