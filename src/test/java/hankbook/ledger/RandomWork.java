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

/** Random work to be tried on a ledger and, beside it, a table of plain numbers that knows only lengths and places. */
public final class RandomWork {
  public static final List<String> SKEINS = List.of("Coral", "Slate", "Oat");

  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static final List<String> PLANS = List.of("Quay towels", "Scarf");
  private static final String OUTSIDE = "MAKER|AWAY|RECOUNT|REWOUND";

  private final Random random;
  private final List<Entry> taken = new ArrayList<>();
  private final Map<String, Long> table = new HashMap<>();
  private final Set<UUID> undone = new HashSet<>();
  private long ids;

  public RandomWork(long seed) {
    random = new Random(seed);
  }

  /** The entry to try next: at times the reversal of one that was taken. */
  public Entry next() {
    return !taken.isEmpty() && random.nextInt(4) == 0 ? reversal() : operation();
  }

  /** Holds a ledger's answer to an entry against the table, which then is as that ledger should be. */
  public void answered(Entry entry, Optional<Refusal> refusal) {
    Map<String, Long> after = tableAfter(entry);
    boolean undoneBefore = entry.reverses().map(undone::contains).orElse(false);
    boolean fits = after.entrySet().stream().noneMatch(e -> e.getValue() < 0 && !e.getKey().matches(".*@(" + OUTSIDE + ")"));
    if (refusal.isEmpty()) {
      assertThat(fits && !undoneBefore).as("taken: %s", entry).isTrue();
      table.putAll(after);
      taken.add(entry);
      entry.reverses().ifPresent(undone::add);
    } else if (refusal.get() instanceof Refusal.AlreadyReversed) {
      assertThat(undoneBefore).isTrue();
    } else {
      assertThat(refusal.get()).isInstanceOf(Refusal.NotEnough.class);
      assertThat(fits).as("refused: %s", entry).isFalse();
    }
  }

  /** Whether balances are what the table says, sum to zero for each skein, and promise no skein twice. */
  public void agreesWith(Balances balances) {
    Map<Holding, Length> expected = new HashMap<>();
    table.forEach((key, tenths) -> {
      int split = key.indexOf('@');
      expected.put(new Holding(key.substring(0, split), Place.parse(key.substring(split + 1))), new Length(tenths));
    });
    assertThat(balances).isEqualTo(new Balances(expected));
    assertThat(balances.sums().values()).allMatch(Length::isZero);
    for (String skein : SKEINS) {
      long promised = sum(balances, skein, "(ORDERED|RESERVED|LOOM|CLOTH|THRUMS|SAMPLE).*");
      assertThat(promised).as("set aside of %s", skein).isLessThanOrEqualTo(-sum(balances, skein, OUTSIDE));
    }
  }

  /** What was taken, first to last. */
  public List<Entry> taken() {
    return List.copyOf(taken);
  }

  /** A number below a bound, from the same seed. */
  public int below(int bound) {
    return random.nextInt(bound);
  }

  private Map<String, Long> tableAfter(Entry entry) {
    Map<String, Long> after = new HashMap<>(table);
    for (Transfer t : entry.transfers()) {
      after.merge(t.skein() + "@" + t.from(), -t.length().tenthsOfMillimetre(), Long::sum);
      after.merge(t.skein() + "@" + t.to(), t.length().tenthsOfMillimetre(), Long::sum);
    }
    return after;
  }

  private static long sum(Balances balances, String skein, String places) {
    return balances.lengths().entrySet().stream()
        .filter(e -> e.getKey().skein().equals(skein) && e.getKey().place().text().matches(places))
        .mapToLong(e -> e.getValue().tenthsOfMillimetre())
        .sum();
  }

  private Entry reversal() {
    return Entry.reversing(pick(taken), new UUID(1, ++ids), DAY, "Ida", "a slip");
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
