package hankbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LedgerProperties {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static final List<String> SKEINS = List.of("Coral", "Slate", "Oat");
  private static final List<String> PLANS = List.of("Quay towels", "Scarf");

  @Property(tries = 200)
  void randomWorkAgreesWithANaiveModelAndAuditsClean(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int steps) {
    Work work = new Work(seed);
    for (int step = 0; step < steps; step++) {
      work.step();
      assertThat(work.book.balances().sums().values()).allMatch(Length::isZero);
      for (String skein : SKEINS) {
        assertThat(work.promised(skein)).as("set aside of %s", skein).isLessThanOrEqualTo(work.inTheHouse(skein));
      }
      assertThat(Audit.of(work.chain, work.book.balances()).findings()).isEmpty();
    }
    assertThat(Book.of(work.chain)).isEqualTo(work.book);
  }

  @Property(tries = 200)
  void anyOneAlteredFieldOfAPastEntryIsFoundAndNamed(@ForAll long seed, @ForAll @IntRange(min = 5, max = 25) int steps) {
    Work work = new Work(seed);
    for (int step = 0; step < steps; step++) {
      work.step();
    }
    if (work.chain.isEmpty()) {
      return;
    }
    int at = work.random.nextInt(work.chain.size());
    for (ChainedEntry altered : alterations(work.chain.get(at))) {
      List<ChainedEntry> chain = new ArrayList<>(work.chain);
      chain.set(at, altered);
      assertThat(Audit.of(chain, work.book.balances()).firstBad()).as("altered: %s", altered).contains(altered);
    }
  }

  /** The entry with each of its fields altered in turn, as far as an altered one can be made at all. */
  private static List<ChainedEntry> alterations(ChainedEntry link) {
    Entry e = link.entry();
    List<ChainedEntry> all = new ArrayList<>(List.of(
        new ChainedEntry(link.number() + 1, e, link.previousHash(), link.hash()),
        new ChainedEntry(link.number(), e, "f" + link.previousHash().substring(1) + "0", link.hash()),
        new ChainedEntry(link.number(), e, link.previousHash(), link.hash() + "0")));
    List<Entry> entries = new ArrayList<>(List.of(
        new Entry(new UUID(9, 9), e.kind(), e.date(), e.author(), e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date().plusDays(1), e.author(), e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date(), e.author() + "x", e.note(), e.transfers(), e.reverses()),
        new Entry(e.id(), e.kind(), e.date(), e.author(), e.note() + "x", e.transfers(), e.reverses())));
    if (e.reverses().isPresent()) {
      entries.add(new Entry(e.id(), e.kind(), e.date(), e.author(), e.note(), e.transfers(), Optional.of(new UUID(9, 9))));
    } else {
      EntryKind other = e.kind() == EntryKind.WOVEN ? EntryKind.WASTE : EntryKind.WOVEN;
      entries.add(new Entry(e.id(), other, e.date(), e.author(), e.note(), e.transfers(), e.reverses()));
    }
    for (Transfer t : alterations(e.transfers().getFirst())) {
      List<Transfer> transfers = new ArrayList<>(e.transfers());
      transfers.set(0, t);
      entries.add(new Entry(e.id(), e.kind(), e.date(), e.author(), e.note(), transfers, e.reverses()));
    }
    entries.forEach(entry -> all.add(new ChainedEntry(link.number(), entry, link.previousHash(), link.hash())));
    return all;
  }

  private static List<Transfer> alterations(Transfer t) {
    Place other = new Place.Thrums("Elsewhere");
    return List.of(
        new Transfer(t.skein() + "x", t.from(), t.to(), t.length()),
        new Transfer(t.skein(), other, t.to(), t.length()),
        new Transfer(t.skein(), t.from(), other, t.length()),
        new Transfer(t.skein(), t.from(), t.to(), t.length().plus(new Length(1))));
  }

  /** Random work on a book and, beside it, on a table of plain numbers that knows only lengths and places. */
  private static final class Work {
    private final Random random;
    private final List<ChainedEntry> chain = new ArrayList<>();
    private final Map<String, Long> table = new HashMap<>();
    private final Set<UUID> undone = new HashSet<>();
    private Book book = Book.EMPTY;
    private long ids;

    Work(long seed) {
      random = new Random(seed);
    }

    void step() {
      Entry entry = !chain.isEmpty() && random.nextInt(4) == 0 ? reversal() : operation();
      Map<String, Long> after = tableAfter(entry);
      boolean undoneBefore = entry.reverses().map(undone::contains).orElse(false);
      boolean fits = after.entrySet().stream()
          .noneMatch(e -> e.getValue() < 0 && !e.getKey().matches(".*@(MAKER|ORDERED|AWAY|RECOUNT|REWOUND)"));
      switch (book.post(entry)) {
        case Outcome.Posted(Book now, ChainedEntry link) -> {
          assertThat(fits && !undoneBefore).as("taken: %s", entry).isTrue();
          book = now;
          chain.add(link);
          table.putAll(after);
          entry.reverses().ifPresent(undone::add);
        }
        case Outcome.Refused(Refusal.AlreadyReversed _) -> assertThat(undoneBefore).isTrue();
        case Outcome.Refused(Refusal.NotEnough _) -> assertThat(fits).as("refused: %s", entry).isFalse();
        case Outcome other -> throw new AssertionError(other);
      }
      bookAgreesWithTable();
      if (book.entries().containsKey(entry.id())) {
        assertThat(book.post(entry)).isEqualTo(new Outcome.AlreadyThere(entry));
      }
    }

    private Map<String, Long> tableAfter(Entry entry) {
      Map<String, Long> after = new HashMap<>(table);
      for (Transfer t : entry.transfers()) {
        after.merge(t.skein() + "@" + t.from(), -t.length().tenthsOfMillimetre(), Long::sum);
        after.merge(t.skein() + "@" + t.to(), t.length().tenthsOfMillimetre(), Long::sum);
      }
      return after;
    }

    private void bookAgreesWithTable() {
      table.forEach((key, tenths) -> {
        int split = key.indexOf('@');
        assertThat(book.balances().at(key.substring(0, split), Place.parse(key.substring(split + 1)))).isEqualTo(new Length(tenths));
      });
    }

    long promised(String skein) {
      return sum(skein, "(RESERVED|LOOM|CLOTH|THRUMS|SAMPLE).*");
    }

    long inTheHouse(String skein) {
      return -sum(skein, "MAKER|ORDERED|AWAY|RECOUNT|REWOUND");
    }

    private long sum(String skein, String places) {
      return book.balances().lengths().entrySet().stream()
          .filter(e -> e.getKey().skein().equals(skein) && e.getKey().place().text().matches(places))
          .mapToLong(e -> e.getValue().tenthsOfMillimetre())
          .sum();
    }

    private Entry reversal() {
      return Entry.reversing(pick(chain).entry(), new UUID(1, ++ids), DAY, "Ida", "a slip");
    }

    private Entry operation() {
      EntryKind kind = pick(Stream.of(EntryKind.values()).filter(k -> k != EntryKind.REVERSAL).toList());
      if (random.nextInt(3) == 0) {
        kind = EntryKind.RECEIVE;
      }
      List<EntryKind.Route> routes = kind.routes().stream().sorted((a, b) -> a.toString().compareTo(b.toString())).toList();
      String plan = pick(PLANS);
      List<Transfer> transfers = new ArrayList<>();
      for (int i = random.nextInt(3); i >= 0; i--) {
        EntryKind.Route route = pick(routes);
        Transfer next = new Transfer(pick(SKEINS), place(route.from(), plan), place(route.to(), plan), new Length(1 + random.nextInt(100)));
        if (transfers.stream().noneMatch(t -> t.skein().equals(next.skein()) && (t.from().equals(next.to()) || t.to().equals(next.from())))) {
          transfers.add(next);
        }
      }
      return Entry.of(new UUID(1, ++ids), kind, DAY, "Ida", "", transfers);
    }

    private static Place place(Place.Kind kind, String plan) {
      return Place.of(kind, kind.planned() ? plan : "");
    }

    private <T> T pick(List<T> list) {
      return list.get(random.nextInt(list.size()));
    }
  }
}
