package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Transfer;
import hankbook.store.EntryRefused;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.store.Session;
import hankbook.store.Store;
import hankbook.yarn.OneLine;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;

/** An open ledger and who writes in it: what each thing a person does starts from. Safe to be used by several threads. */
public final class Studio implements AutoCloseable {
  private final Store store;
  private final String author;
  private final Clock clock;
  private final LearntSoFar learnt = new LearntSoFar();

  private Studio(Store store, String author, Clock clock) {
    this.store = store;
    this.author = author;
    this.clock = clock;
  }

  /**
   * Opens a ledger, and makes it where there is none.
   *
   * @param author who signs what is entered; not blank
   */
  public static Studio open(LedgerAddress address, String author) throws LedgerUnavailable {
    return open(address, author, Clock.system(ZoneId.systemDefault()));
  }

  /** Opens a ledger with a clock of one's own. */
  public static Studio open(LedgerAddress address, String author, Clock clock) throws LedgerUnavailable {
    String signature = OneLine.of(author);
    return new Studio(Store.open(address), signature.isEmpty() ? "unnamed" : signature, clock);
  }

  /** Where the ledger is kept. */
  public LedgerAddress address() {
    return store.address();
  }

  /** Who signs what is entered. */
  public String author() {
    return author;
  }

  /** The date that what is done now bears. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The date that a moment bore here. */
  LocalDate dayOf(Instant moment) {
    return LocalDate.ofInstant(moment, clock.getZone());
  }

  /** Whether nothing was ever entered. */
  public boolean isBlank() {
    return read(Studio::isBlank);
  }

  static boolean isBlank(Session session) {
    return session.skeins().isEmpty() && session.plans().names().isEmpty() && session.looms().all().isEmpty() && session.reeds().all().isEmpty();
  }

  /** How much there is of what everybody did and others wrote down, which only ever grows: a cheap way to see whether there is news. */
  public long written() {
    return read(session -> session.entries().end().entries() + session.writtenByOthers(author));
  }

  <T> T read(Function<Session, T> work) {
    return store.read(work);
  }

  /** Does all of the work or, where it throws, nothing of it. */
  <T, X extends Exception> T write(Work<T, X> work) throws NotDone, X {
    return within(store::write, work);
  }

  /** Looks whether work that writes nothing is possible. */
  <T, X extends Exception> T tried(Work<T, X> work) throws NotDone, X {
    return within(store::read, work);
  }

  private static <T, X extends Exception> T within(Function<Function<Session, T>, T> transaction, Work<T, X> work) throws NotDone, X {
    AtomicReference<Exception> why = new AtomicReference<>();
    try {
      return transaction.apply(session -> {
        try {
          return work.on(session);
        } catch (RuntimeException fault) {
          throw fault;
        } catch (Exception reason) {
          why.set(reason);
          throw new TakenBack();
        }
      });
    } catch (EntryRefused refused) {
      throw NotDone.because(refused.refusal().phrase());
    } catch (TakenBack undone) {
      if (why.get() instanceof NotDone notDone) {
        throw notDone;
      }
      // Nothing else can have been caught than what the work declares.
      @SuppressWarnings("unchecked")
      X reason = (X) Objects.requireNonNull(why.get());
      throw reason;
    }
  }

  /** What its finished plans taught. */
  LearntSoFar learnt() {
    return learnt;
  }

  Instant now() {
    return clock.instant();
  }

  /** The id of what befalls a skein once, however often a file of it is read; as long as that is not taken back, after which it may come again. */
  static UUID onceFor(Session session, String deed, String code) {
    UUID first = UUID.nameUUIDFromBytes((deed + " " + code).getBytes(StandardCharsets.UTF_8));
    return session.entries().entry(first).isEmpty() ? first : UUID.randomUUID();
  }

  /** Posts what moves anything at all. */
  Optional<ChainedEntry> post(Session session, UUID id, EntryKind kind, String note, List<Transfer> transfers) {
    return post(session, id, kind, today(), note, transfers);
  }

  Optional<ChainedEntry> post(Session session, UUID id, EntryKind kind, LocalDate date, String note, List<Transfer> transfers) {
    return transfers.isEmpty() ? Optional.empty() : session.entries().post(Entry.of(id, kind, date, author, note, transfers), now());
  }

  @Override
  public void close() {
    store.close();
  }

  /** Work in the ledger that may turn out not to be possible. */
  interface Work<T, X extends Exception> {
    T on(Session session) throws NotDone, X;
  }

  /** Ends a transaction so that it is undone. */
  private static final class TakenBack extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }
}
