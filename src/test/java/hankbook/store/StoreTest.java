package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.DAY;
import static hankbook.store.Examples.LOOM;
import static hankbook.store.Examples.MAKER;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.SET_ASIDE;
import static hankbook.store.Examples.SHELF;
import static hankbook.store.Examples.TOWELS;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.balances;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.entry;
import static hankbook.store.Examples.id;
import static hankbook.store.Examples.move;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.refusal;
import static hankbook.store.Examples.reserve;
import static hankbook.store.Examples.reverse;
import static hankbook.store.Examples.skein;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.ledger.Balances;
import hankbook.ledger.Chain;
import hankbook.ledger.ChainEnd;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Refusal;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.YarnNumber;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What both databases do alike. Every test ends with an audit. */
@ParameterizedClass
@EnumSource
class StoreTest {
  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Store store;

  StoreTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    address = vendor.ledger(folder);
    store = Store.open(address);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(audit(store)).isEmpty();
    store.close();
  }

  @Test
  void aSkeinOfWhichAllIsKnownComesBackAsItWentIn() {
    Skein full = new Skein(
        "S 7", new YarnColour("Fell wool 2/16", "Bracken"), "#8a5a2b", "85 % wool, 15 % nylon", Optional.of(YarnNumber.parse("2/16 worsted")), PackageForm.BALL,
        Optional.of(new Length(12_345_678)), Optional.of(new Weighing(new Mass(123_456), new Mass(7_890))), true, "lot 12 b", "shelf 3, left",
        Optional.of(Money.ofMajor(CurrencyUnit.JPY, 4200)), Optional.of(DAY), Optional.empty());
    assertThat(kept(full)).isEqualTo(full);
  }

  @Test
  void turnsAndMoistureComeBackAsTheyWentIn() {
    Skein bare = skein("S 8");
    Skein measured = new Skein(
        "S 8", bare.yarn(), "", "silk", Optional.empty(), PackageForm.SKEIN, Optional.empty(), Optional.of(new Turns(450, Length.parse("1.5 yd"))),
        Optional.of(new Weighing(new Mass(98_500), new Mass(1), Optional.of(Percentage.parse("9.123456789 %")))), false, "", "", Optional.empty(), Optional.empty(), Optional.empty(),
        Optional.empty());
    assertThat(kept(measured)).isEqualTo(measured);
  }

  @Test
  void aSkeinOfWhichNextToNothingIsKnownComesBackAsItWentIn() {
    assertThat(kept(skein(CORAL))).isEqualTo(skein(CORAL));
  }

  @Test
  void anySingleThingKnownOfASkeinComesBackAsItWentIn() {
    Skein bare = skein("bare");
    List<Skein> skeins = List.of(
        with(bare, "grist", Optional.of(YarnNumber.parse("Nm 28.50/2")), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
        with(bare, "no length", Optional.empty(), Optional.of(Length.ZERO), Optional.empty(), Optional.empty(), Optional.empty()),
        with(bare, "longest", Optional.empty(), Optional.of(Skein.LONGEST), Optional.empty(), Optional.empty(), Optional.empty()),
        with(bare, "no mass", Optional.empty(), Optional.empty(), Optional.of(new Weighing(Mass.ZERO, Mass.ZERO)), Optional.empty(), Optional.empty()),
        with(bare, "a gift", Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(Money.zero(CurrencyUnit.EUR)), Optional.empty()),
        with(bare, "thousandths", Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(Money.ofMinor(CurrencyUnit.of("KWD"), 12_345)), Optional.empty()),
        with(bare, "first day", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(LocalDate.of(1, 1, 1))),
        with(bare, "skipped day", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(LocalDate.of(1582, 10, 10))),
        with(bare, "leap day", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(LocalDate.of(2024, 2, 29))),
        with(bare, "last day", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(LocalDate.of(9999, 12, 31))));
    for (Skein skein : skeins) {
      assertThat(kept(skein)).isEqualTo(skein);
    }
  }

  @Test
  void skeinsComeInTheOrderOfTheirCodesOnEitherDatabase() {
    assertThat(hasNoSkein()).isTrue();
    add(store, "b", "S10", "a b", "ä", "B", "S9", "A", "a", "a-b", "ab");
    assertThat(skeins()).extracting(Skein::code).containsExactly("A", "B", "S10", "S9", "a", "a b", "a-b", "ab", "b", "ä");
    assertThat(hasNoSkein()).isFalse();
    assertThat(found("s9")).isEmpty();
  }

  @Test
  void aCodeBelongsToOneSkeinOnly() {
    add(store, CORAL);
    assertThatThrownBy(() -> add(store, "Slate", CORAL)).isInstanceOfSatisfying(DataAccessException.class, taken -> assertThat(taken.sqlState()).isEqualTo("23505"));
    assertThat(skeins()).extracting(Skein::code).containsExactly(CORAL);
  }

  @Test
  void everyVersionOfAPlanIsKeptAndTheNewestIsThePlan() throws Exception {
    for (String body : List.of("first", "second", "second", "", "first")) {
      keep("Scarf", body);
    }
    keep("ash", "A");
    keep("Towels", "T");
    assertThat(newest("Scarf")).contains("first");
    assertThat(newest("scarf")).isEmpty();
    assertThat(planNames()).containsExactly("Scarf", "Towels", "ash");
    try (var connection = Vendor.behind(address);
        var rows = connection.createStatement().executeQuery("select version, body, author from plan_version where plan = 'Scarf' order by version")) {
      for (String version : List.of("1 first Ida", "2 second Ida", "3  Ida", "4 first Ida")) {
        assertThat(rows.next()).isTrue();
        assertThat(rows.getInt(1) + " " + rows.getString(2) + " " + rows.getString(3)).isEqualTo(version);
      }
      assertThat(rows.next()).isFalse();
    }
  }

  @Test
  void entriesAreChainedAndReadBackAsTheyWerePosted() {
    add(store, CORAL, "Coral no. 4");
    List<Entry> entries = List.of(
        receive(7, 100),
        Entry.of(id(3), EntryKind.RESERVE, LocalDate.of(1582, 10, 10), "Ida", "for the fair\n\tin June", List.of(move(SHELF, SET_ASIDE, 60))),
        entry(5, EntryKind.DRAW, move(SET_ASIDE, LOOM, 60), move(SHELF, LOOM, 5)),
        entry(1, EntryKind.REWIND, move(SHELF, new Place.Rewound(), 9), new Transfer("Coral no. 4", new Place.Rewound(), SHELF, Length.metres(9))),
        reverse(entry(1, EntryKind.REWIND, move(SHELF, new Place.Rewound(), 9), new Transfer("Coral no. 4", new Place.Rewound(), SHELF, Length.metres(9))), 2));
    String previous = Chain.START;
    long number = 0;
    for (Entry entry : entries) {
      number++;
      ChainedEntry link = Chain.link(number, entry, previous);
      assertThat(post(store, entry)).contains(link);
      previous = link.hash();
      RecordedEntry recorded = new RecordedEntry(link, NOON);
      assertThat(numbered(link.number())).contains(recorded);
      assertThat(posted(entry.id())).contains(entry);
      assertThat(end()).isEqualTo(new ChainEnd(link.number(), link.hash()));
    }
    assertThat(entries().stream().map(RecordedEntry::entry)).containsExactlyElementsOf(entries);
    assertThat(chain(store)).hasSize(5).extracting(ChainedEntry::number).isSorted();
    assertThat(numbered(6)).isEmpty();
    assertThat(posted(id(6))).isEmpty();
  }

  @Test
  void aLongNoteComesBackWhole() {
    add(store, CORAL);
    Entry told = Entry.of(id(1), EntryKind.RECEIVE, DAY, "Ida", "Spun by the sea. 🧶 ".repeat(20_000), List.of(move(MAKER, SHELF, 1)));
    post(store, told);
    assertThat(posted(id(1))).contains(told);
  }

  @Test
  void theTimeOfWritingIsKeptToTheMicrosecond() {
    add(store, CORAL);
    Instant moment = Instant.parse("2026-10-25T01:30:00.987654Z");
    store.write(session -> session.entries().post(receive(1, 1), moment));
    assertThat(entries()).extracting(RecordedEntry::recorded).containsExactly(moment);
  }

  @Test
  void theSameEntryTwiceIsThereOnce() {
    add(store, CORAL);
    post(store, receive(1, 100));
    State before = State.of(store);
    assertThat(post(store, receive(1, 100))).isEmpty();
    assertThat(State.of(store)).isEqualTo(before);
  }

  @Test
  void everyRefusalTakesTheWholeTransactionBack() {
    add(store, CORAL);
    Entry received = receive(1, 100);
    Entry reversed = reserve(3, 10);
    post(store, received);
    post(store, reserve(2, 60));
    post(store, reversed);
    post(store, reverse(reversed, 4));
    State before = State.of(store);
    Stream.of(
            refused(Refusal.SameIdOtherContent.class, receive(1, 99)),
            refused(Refusal.NothingToReverse.class, reverse(receive(8, 100), 9)),
            refused(Refusal.AlreadyReversed.class, reverse(reversed, 9)),
            refused(Refusal.WrongReversal.class, new Entry(id(9), EntryKind.REVERSAL, DAY, "Ida", "half", List.of(move(SHELF, MAKER, 50)), Optional.of(id(1)))),
            refused(Refusal.WrongPlaces.class, entry(9, EntryKind.RESERVE, move(SHELF, LOOM, 1))),
            refused(Refusal.NotEnough.class, reserve(9, 46)),
            refused(Refusal.NotEnough.class, reverse(received, 9)))
        .forEach(refused -> {
          assertThatThrownBy(() -> store.write(session -> {
                session.skeins().add(skein("Slate"), NOON);
                session.plans().keep("Scarf", "{}", "Ida", NOON);
                session.entries().post(receive(20, 5), NOON);
                return session.entries().post(refused.entry(), NOON);
              }))
              .isInstanceOfSatisfying(EntryRefused.class, problem -> {
                assertThat(problem.refusal()).isInstanceOf(refused.why());
                assertThat(problem).hasMessage(problem.refusal().message());
              });
          assertThat(State.of(store)).isEqualTo(before);
        });
  }

  @Test
  void workThatFailsLeavesNothing() {
    State before = State.of(store);
    assertThatThrownBy(() -> store.write(session -> {
          session.skeins().add(skein(CORAL), NOON);
          session.entries().post(receive(1, 5), NOON);
          throw new IllegalStateException("the cat walked over the keys");
        }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(State.of(store)).isEqualTo(before);
  }

  @Test
  void aTransferOfASkeinThatIsNotThereIsRefusedAndLeavesNothing() {
    State before = State.of(store);
    assertThatThrownBy(() -> post(store, receive(1, 5)))
        .isInstanceOfSatisfying(DataAccessException.class, unknown -> assertThat(unknown.sqlState()).isEqualTo(vendor.foreignKeyState));
    assertThat(State.of(store)).isEqualTo(before);
  }

  @Test
  void aReversalTakesItsEntryBackAndCanItselfBeReversed() {
    add(store, CORAL);
    Entry received = receive(1, 100);
    Entry undo = reverse(received, 2);
    Entry redo = reverse(undo, 3);
    post(store, received);
    assertThat(isReversed(received)).isFalse();
    post(store, undo);
    assertThat(isReversed(received)).isTrue();
    assertThat(balances(store)).isEqualTo(Balances.NONE);
    post(store, redo);
    assertThat(balance(CORAL, SHELF)).isEqualTo(Length.metres(100));
    assertThat(refusal(store, reverse(received, 4))).containsInstanceOf(Refusal.AlreadyReversed.class);
    post(store, reverse(redo, 5));
    assertThat(balances(store)).isEqualTo(Balances.NONE);
    assertThat(post(store, received)).isEmpty();
  }

  @Test
  void balancesAreWhatTheEntriesAddUpTo() {
    add(store, CORAL, "Slate");
    Transfer slate = new Transfer("Slate", MAKER, SHELF, Length.metres(7));
    List<Entry> entries = List.of(receive(1, 100), entry(2, EntryKind.RECEIVE, slate), reserve(3, 60), entry(4, EntryKind.DRAW, move(SET_ASIDE, LOOM, 60)));
    entries.forEach(entry -> post(store, entry));
    assertThat(balances(store)).isEqualTo(Balances.of(entries));
    assertThat(ofSkein("Slate")).isEqualTo(Balances.of(entries.subList(1, 2)));
    assertThat(ofPlan(TOWELS).lengths()).containsOnlyKeys(new Holding(CORAL, LOOM));
    assertThat(balance(CORAL, SET_ASIDE)).isEqualTo(Length.ZERO);
    assertThat(balance("Slate", LOOM)).isEqualTo(Length.ZERO);
  }

  @Test
  void aReaderSeesTheLedgerAsItStoodAtOneMoment() {
    add(store, CORAL);
    post(store, receive(1, 100));
    store.read(session -> {
      Balances before = session.balances().all();
      post(store, receive(2, 50));
      assertThat(session.entries().chain()).hasSize(1);
      assertThat(session.entries().end().entries()).isEqualTo(1);
      assertThat(session.balances().all()).isEqualTo(before);
      return before;
    });
    assertThat(chain(store)).hasSize(2);
  }

  @Test
  void aThreadThatIsStoppedDoesNotCloseTheLedgerForTheOthers() throws Exception {
    add(store, CORAL);
    List<String> refusals = new CopyOnWriteArrayList<>();
    for (int i = 1; i <= 5; i++) {
      Entry next = receive(i, 1);
      Thread stopped = new Thread(() -> {
        Thread.currentThread().interrupt();
        try {
          post(store, next);
        } catch (DataAccessException | LedgerSilent refused) {
          refusals.add(String.valueOf(refused.getMessage()));
        }
      });
      stopped.start();
      stopped.join();
    }
    assertThat(refusals).allMatch(refusal -> refusal.contains("does not answer"));
    post(store, receive(9, 1));
    assertThat(posted(id(9))).isPresent();
  }

  @Test
  void whatWasWrittenIsThereWhenTheLedgerIsOpenedAgain() throws Exception {
    add(store, CORAL);
    post(store, receive(1, 100));
    keep("Scarf", "{}");
    State before = State.of(store);
    store.close();
    store = Store.open(address);
    assertThat(State.of(store)).isEqualTo(before);
  }

  private List<Skein> skeins() {
    return store.read(session -> session.skeins().all());
  }

  private Optional<Skein> found(String code) {
    return store.read(session -> session.skeins().find(code));
  }

  private boolean hasNoSkein() {
    return store.read(session -> session.skeins().isEmpty());
  }

  private List<String> planNames() {
    return store.read(session -> session.plans().names());
  }

  private Optional<String> newest(String plan) {
    return store.read(session -> session.plans().newest(plan).map(PlanVersion::body));
  }

  private List<RecordedEntry> entries() {
    return store.read(session -> session.entries().all());
  }

  private Optional<RecordedEntry> numbered(long number) {
    return store.read(session -> session.entries().numbered(number));
  }

  private Optional<Entry> posted(UUID id) {
    return store.read(session -> session.entries().entry(id));
  }

  private boolean isReversed(Entry entry) {
    return store.read(session -> session.entries().isReversed(entry.id()));
  }

  private ChainEnd end() {
    return store.read(session -> session.entries().end());
  }

  private Length balance(String skein, Place place) {
    return store.read(session -> session.entries().balance(new Holding(skein, place)));
  }

  private Balances ofSkein(String code) {
    return store.read(session -> session.balances().ofSkein(code));
  }

  private Balances ofPlan(String plan) {
    return store.read(session -> session.balances().ofPlan(plan));
  }

  private void keep(String plan, String body) {
    store.write(session -> {
      session.plans().keep(plan, body, "Ida", NOON);
      return plan;
    });
  }

  private Skein kept(Skein skein) {
    store.write(session -> {
      session.skeins().add(skein, NOON);
      return skein;
    });
    return found(skein.code()).orElseThrow();
  }

  private static Skein with(
      Skein bare, String code, Optional<YarnNumber> grist, Optional<Length> label, Optional<Weighing> weighing, Optional<Money> cost, Optional<LocalDate> received) {
    return new Skein(
        code, bare.yarn(), bare.hex(), bare.fibre(), grist, PackageForm.SPOOL, label, weighing, bare.opened(), bare.lot(), bare.location(), cost, received,
        Optional.empty());
  }

  private static Refused refused(Class<? extends Refusal> why, Entry entry) {
    return new Refused(why, entry);
  }

  private record Refused(Class<? extends Refusal> why, Entry entry) {}

  /** All that a ledger holds. */
  private record State(List<Skein> skeins, List<String> plans, List<RecordedEntry> entries, ChainEnd end, Balances balances) {
    static State of(Store store) {
      return store.read(session -> new State(
          session.skeins().all(), session.plans().names(), session.entries().all(), session.entries().end(), session.balances().all()));
    }
  }
}
