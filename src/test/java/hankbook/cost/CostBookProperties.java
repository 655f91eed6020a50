package hankbook.cost;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Balances;
import hankbook.ledger.Book;
import hankbook.ledger.Entry;
import hankbook.ledger.Holding;
import hankbook.ledger.Outcome;
import hankbook.ledger.Place;
import hankbook.ledger.RandomWork;
import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What must hold of the costs after any history that a ledger takes. */
class CostBookProperties {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @Property(tries = 400)
  void whatAllSkeinsCostAtAllPlacesIsWhatWasPaidForThem(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    Map<String, Money> paid = paid(seed);
    CostBook book = CostBook.of(CurrencyUnit.EUR, history(seed, steps), paid);
    assertThat(everywhere(book)).isEqualTo(sum(paid));
  }

  @Property(tries = 200)
  void soItIsAtTheEndOfEachDayWhateverDatesTheEntriesBear(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    Map<String, Money> paid = paid(seed);
    List<Entry> entries = datedAtRandom(history(seed, steps), new Random(seed));
    for (int day = -1; day < 5; day++) {
      CostBook book = CostBook.upTo(DAY.plusDays(day), CurrencyUnit.EUR, entries, paid);
      assertThat(everywhere(book)).isEqualTo(sum(paid));
      assertThat(book.held().values()).allMatch(worth -> worth.length().isPositive());
    }
    assertThat(CostBook.upTo(DAY.plusDays(5), CurrencyUnit.EUR, entries, paid).held()).isEqualTo(CostBook.of(CurrencyUnit.EUR, entries, paid).held());
  }

  @Property(tries = 400)
  void everyPlaceInTheHouseHoldsTheMetresThatTheLedgerSays(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    List<Entry> entries = history(seed, steps);
    CostBook book = CostBook.of(CurrencyUnit.EUR, entries, paid(seed));
    Balances balances = Balances.of(entries);
    Map<Holding, Length> real = new HashMap<>(balances.lengths());
    real.keySet().removeIf(holding -> !holding.place().neverNegative());
    Map<Holding, Length> held = new HashMap<>();
    book.held().forEach((holding, worth) -> held.put(holding, worth.length()));
    held.keySet().removeIf(holding -> !holding.place().neverNegative());
    assertThat(held).isEqualTo(real);
  }

  @Property(tries = 400)
  void takingBackTheLastEntryAtOnceRestoresEveryCost(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    List<Entry> entries = history(seed, steps);
    if (entries.isEmpty()) {
      return;
    }
    Map<String, Money> paid = paid(seed);
    List<Entry> undone = new ArrayList<>(entries);
    Entry undo = Entry.reversing(entries.getLast(), new UUID(7, 7), DAY, "Ida", "a slip");
    undone.add(undo);
    CostBook before = CostBook.of(CurrencyUnit.EUR, withNothingAfter(entries), paid);
    CostBook after = CostBook.of(CurrencyUnit.EUR, undone, paid);
    assertThat(after.held()).isEqualTo(before.held());
    assertThat(after.toCome()).isEqualTo(before.toCome());
    undone.add(Entry.reversing(undo, new UUID(7, 8), DAY, "Ida", "no slip after all"));
    assertThat(CostBook.of(CurrencyUnit.EUR, undone, paid).held()).isEqualTo(CostBook.of(CurrencyUnit.EUR, entries, paid).held());
  }

  /** The same work without its last entry. */
  private static List<Entry> withNothingAfter(List<Entry> entries) {
    return entries.subList(0, entries.size() - 1);
  }

  static List<Entry> history(long seed, int steps) {
    RandomWork random = new RandomWork(seed);
    Book book = Book.EMPTY;
    for (int step = 0; step < steps; step++) {
      Entry entry = random.next();
      switch (book.post(entry)) {
        case Outcome.Posted posted -> {
          random.answered(entry, Optional.empty());
          book = posted.book();
        }
        case Outcome.Refused refused -> random.answered(entry, Optional.of(refused.refusal()));
        case Outcome other -> throw new AssertionError(other);
      }
    }
    return random.taken();
  }

  static Map<String, Money> paid(long seed) {
    Random random = new Random(seed + 1);
    Map<String, Money> paid = new HashMap<>();
    RandomWork.SKEINS.forEach(skein -> paid.put(skein, Money.ofMinor(CurrencyUnit.EUR, random.nextInt(5000))));
    return paid;
  }

  private static List<Entry> datedAtRandom(List<Entry> entries, Random random) {
    return entries.stream()
        .map(e -> new Entry(e.id(), e.kind(), DAY.plusDays(random.nextInt(6)), e.author(), e.note(), e.transfers(), e.reverses()))
        .toList();
  }

  static Money everywhere(CostBook book) {
    return book.worth(_ -> true).cost().plus(sum(book.toCome()));
  }

  static Money sum(Map<String, Money> amounts) {
    return amounts.values().stream().reduce(Money.zero(CurrencyUnit.EUR), Money::plus);
  }
}
