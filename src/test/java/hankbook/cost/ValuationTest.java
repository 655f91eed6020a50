package hankbook.cost;

import static hankbook.cost.Ledger.LOOM;
import static hankbook.cost.Ledger.SHELF;
import static hankbook.cost.Ledger.euros;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The stock by three methods. A, B and C are of one yarn and colour; D is of another. */
class ValuationTest {
  private static final Map<String, Money> PAID = Map.of("A", euros("10.00"), "B", euros("20.00"), "C", euros("60.00"), "D", euros("5.00"));

  @Test
  void eachMethodTakesTheCostOfOtherMetres() {
    // 100 m at 10 cents, 100 m at 20; the older skein is drawn down to 40 m.
    Ledger ledger = new Ledger().on(1).receive("A", 100).on(2).receive("B", 100).on(3).draw("B", 60).move(EntryKind.WOVEN, "B", LOOM, Ledger.CLOTH, 60);
    assertThat(value(ledger, ValueMethod.IDENTIFIED)).isEqualTo(euros("18.00"));
    assertThat(value(ledger, ValueMethod.FIFO)).as("the newest 140 m: 100 at 20, 40 at 10").isEqualTo(euros("24.00"));
    assertThat(value(ledger, ValueMethod.AVERAGE)).as("140 m at 15").isEqualTo(euros("21.00"));
  }

  @Test
  void theAverageMovesWithEachReceipt() {
    // 100 m at 10; 50 used leave 5.00; 100 m at 20 make 150 m for 25.00; 30 used take 5.00.
    Ledger ledger = new Ledger().receive("A", 100).part("A", 50).receive("B", 100).part("B", 30);
    assertThat(value(ledger, ValueMethod.AVERAGE)).isEqualTo(euros("20.00"));
  }

  @Test
  void foundMetresBeyondWhatWasReceivedHaveNoCostByFirstInFirstOut() {
    Ledger ledger = new Ledger().receive("A", 100).found("A", 20);
    assertThat(value(ledger, ValueMethod.FIFO)).isEqualTo(euros("10.00"));
    assertThat(value(ledger.part("A", 50), ValueMethod.FIFO)).as("70 of the 100 received").isEqualTo(euros("7.00"));
  }

  @Test
  void yarnThatIsWoundOntoAnotherSkeinDidNotComeAnew() {
    // A is wound onto B after C came: the newest 150 m are the 100 of C at 60 cents and 50 of A at 10.
    Ledger ledger = new Ledger().on(1).receive("A", 100).on(2).receive("C", 100).on(3);
    ledger.add(
        EntryKind.REWIND, new Transfer("A", SHELF, new Place.Rewound(), Length.metres(100)), new Transfer("B", new Place.Rewound(), SHELF, Length.metres(100)));
    assertThat(value(ledger.part("C", 50), ValueMethod.FIFO)).isEqualTo(euros("65.00"));
  }

  @Test
  void aReceiptThatWasTakenBackValuesNothing() {
    Ledger ledger = new Ledger().receive("A", 100).receive("C", 100).reverse(2);
    for (ValueMethod method : ValueMethod.values()) {
      assertThat(value(ledger, method)).as(method.key()).isEqualTo(euros("10.00"));
    }
    ledger.reverse(3);
    for (ValueMethod method : ValueMethod.values()) {
      assertThat(value(ledger, method)).as(method.key()).isEqualTo(euros("70.00"));
    }
  }

  @Test
  void theValueIsSharedOverSkeinsAndPlacesToTheCent() {
    Ledger ledger = new Ledger().receive("A", 100).receive("B", 100).draw("A", 50).receive("D", 30);
    StockValue value = valuation(ledger.entries()).by(ValueMethod.AVERAGE);
    assertThat(value.inTheHouse()).isEqualTo(Map.of(
        new Holding("A", LOOM), new Worth(Length.metres(50), euros("7.50")), new Holding("A", SHELF), new Worth(Length.metres(50), euros("7.50")),
        new Holding("B", SHELF), new Worth(Length.metres(100), euros("15.00")), new Holding("D", SHELF), new Worth(Length.metres(30), euros("5.00"))));
  }

  @Test
  void yarnOnOrderAndSkeinsOfUnknownCostStandApart() {
    Ledger ledger = new Ledger().receive("A", 100).move(EntryKind.EXPECT, "B", Ledger.MAKER, Ledger.ORDERED, 100).receive("E", 40);
    for (ValueMethod method : ValueMethod.values()) {
      StockValue value = valuation(ledger.entries()).by(method);
      assertThat(value.total()).isEqualTo(new Worth(Length.metres(100), euros("10.00")));
      assertThat(value.ordered()).isEqualTo(new Worth(Length.metres(100), euros("20.00")));
      assertThat(value.withoutCost()).isEqualTo(Map.of(new Holding("E", SHELF), Length.metres(40)));
    }
  }

  @Test
  void aMethodIsReadByItsKey() {
    assertThat(ValueMethod.parse(" FIFO ")).isEqualTo(ValueMethod.FIFO);
    assertThatThrownBy(() -> ValueMethod.parse("lifo")).isInstanceOf(Unreadable.class).hasMessage("found 'lifo', wanted one of identified, fifo, average");
  }

  @Property(tries = 150)
  void noMethodValuesTheStockUnderNothingOrOverWhatWasPaid(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    List<Entry> entries = CostBookProperties.history(seed, steps);
    Map<String, Money> paid = CostBookProperties.paid(seed);
    Valuation valuation = new Valuation(CurrencyUnit.EUR, entries, paid, _ -> true, skein -> new YarnColour("Skerry", skein.equals("Oat") ? "Oat" : "Coral"));
    StockValue identified = valuation.by(ValueMethod.IDENTIFIED);
    assertThat(identified.total()).isEqualTo(valuation.book().worth(StockValue::isInTheHouse));
    for (ValueMethod method : List.of(ValueMethod.FIFO, ValueMethod.AVERAGE)) {
      StockValue value = valuation.by(method);
      assertThat(value.inTheHouse().keySet()).isEqualTo(identified.inTheHouse().keySet());
      assertThat(value.total().length()).isEqualTo(identified.total().length());
      if (method == ValueMethod.AVERAGE) {
        assertThat(value.total().cost()).isLessThanOrEqualTo(CostBookProperties.sum(paid));
      }
    }
  }

  @Property(tries = 150)
  void firstInFirstOutIsWhatAQueueOfMetresLeaves(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int steps) {
    Random random = new Random(seed);
    Ledger ledger = new Ledger();
    Map<String, Money> paid = new HashMap<>();
    Map<String, Integer> shelf = new HashMap<>();
    Deque<Integer> queue = new ArrayDeque<>();
    for (int step = 0; step < steps; step++) {
      if (shelf.isEmpty() || random.nextInt(3) == 0) {
        String skein = "S" + step;
        int metres = 1 + random.nextInt(40);
        int cents = random.nextInt(30);
        ledger.receive(skein, metres);
        paid.put(skein, Money.ofMinor(CurrencyUnit.EUR, (long) metres * cents));
        shelf.put(skein, metres);
        for (int metre = 0; metre < metres; metre++) {
          queue.addLast(cents);
        }
      } else {
        List<String> skeins = shelf.keySet().stream().sorted().toList();
        String skein = skeins.get(random.nextInt(skeins.size()));
        int metres = 1 + random.nextInt(shelf.getOrDefault(skein, 1));
        ledger.part(skein, metres);
        shelf.computeIfPresent(skein, (_, held) -> held == metres ? null : held - metres);
        for (int metre = 0; metre < metres; metre++) {
          queue.removeFirst();
        }
      }
    }
    StockValue value = new Valuation(CurrencyUnit.EUR, ledger.entries(), paid, _ -> true, _ -> new YarnColour("Skerry", "Coral")).by(ValueMethod.FIFO);
    assertThat(value.total().length()).isEqualTo(Length.metres(queue.size()));
    assertThat(value.total().cost().getAmountMinorLong()).isEqualTo(queue.stream().mapToLong(Integer::longValue).sum());
  }

  private static Money value(Ledger ledger, ValueMethod method) {
    return valuation(ledger.entries()).by(method).total().cost();
  }

  private static Valuation valuation(List<Entry> entries) {
    return new Valuation(CurrencyUnit.EUR, entries, PAID, _ -> true, skein -> new YarnColour("Skerry 16/2", skein.equals("D") ? "Woad" : "Chalk"));
  }
}
