package hankbook.cost;

import static hankbook.cost.Ledger.AWAY;
import static hankbook.cost.Ledger.CLOTH;
import static hankbook.cost.Ledger.LOOM;
import static hankbook.cost.Ledger.MAKER;
import static hankbook.cost.Ledger.ORDERED;
import static hankbook.cost.Ledger.RECOUNT;
import static hankbook.cost.Ledger.SHELF;
import static hankbook.cost.Ledger.THRUMS;
import static hankbook.cost.Ledger.euros;
import static hankbook.cost.Ledger.paid;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Costs worked out by hand. A is 300 m for 10.00 EUR, 3 1/3 cents the metre; what is expected stands beside each check. */
class CostBookTest {
  private static final String A = "A";
  private static final String B = "B";

  @Test
  void aPartTakesItsShareToTheNearestCentAndTheLastBitTakesTheRest() {
    CostBook drawn = new Ledger().receive(A, 300).draw(A, 100).draw(A, 100).book(paid(A, "10.00"));
    // 3.33 of 10.00, then half of the 6.67 that are left, 3.335, rounded up.
    assertCost(drawn, A, LOOM, 200, "6.67");
    assertCost(drawn, A, SHELF, 100, "3.33");
    CostBook emptied = new Ledger().receive(A, 300).draw(A, 100).draw(A, 100).draw(A, 100).book(paid(A, "10.00"));
    assertCost(emptied, A, LOOM, 300, "10.00");
    assertThat(emptied.held()).hasSize(1);
  }

  @Test
  void whatComesBackFromTheLoomComesWithItsShareOfWhatWasDrawn() {
    CostBook book = new Ledger().receive(A, 300).draw(A, 200).giveBack(A, 50).move(EntryKind.WOVEN, A, LOOM, CLOTH, 120).move(EntryKind.WASTE, A, LOOM, THRUMS, 30)
        .book(paid(A, "10.00"));
    // Drawn 6.67; a quarter of it, 1.67, comes back; of the 5.00 that are left four fifths are woven.
    assertCost(book, A, SHELF, 150, "5.00");
    assertCost(book, A, CLOTH, 120, "4.00");
    assertCost(book, A, THRUMS, 30, "1.00");
    assertThat(book.plan("Scarf")).isEqualTo(Map.of(
        Place.Kind.CLOTH, new Worth(Length.metres(120), euros("4.00")), Place.Kind.THRUMS, new Worth(Length.metres(30), euros("1.00"))));
  }

  @Test
  void yarnThatARecountDoesNotFindIsALossAndComesBackWithItsCost() {
    CostBook lost = new Ledger().receive(A, 300).lost(A, 30).book(paid(A, "10.00"));
    assertCost(lost, A, RECOUNT, 30, "1.00");
    assertCost(lost, A, SHELF, 270, "9.00");
    CostBook found = new Ledger().receive(A, 300).lost(A, 30).found(A, 15).book(paid(A, "10.00"));
    assertCost(found, A, RECOUNT, 15, "0.50");
    assertCost(found, A, SHELF, 285, "9.50");
  }

  @Test
  void yarnFoundBeyondWhatWasLostIsFree() {
    CostBook book = new Ledger().receive(A, 300).lost(A, 30).found(A, 130).book(paid(A, "10.00"));
    assertCost(book, A, SHELF, 400, "10.00");
    assertThat(book.held()).hasSize(1);
    CostBook drawn = new Ledger().receive(A, 300).found(A, 100).draw(A, 100).book(paid(A, "10.00"));
    assertCost(drawn, A, LOOM, 100, "2.50");
  }

  @Test
  void whatIsPartedWithTakesItsCostAway() {
    CostBook book = new Ledger().receive(A, 300).receive(B, 50).part(A, 60).book(Map.of(A, euros("10.00"), B, euros("7.50")));
    assertCost(book, A, AWAY, 60, "2.00");
    assertThat(book.worth(place -> place instanceof Place.Shelf)).isEqualTo(new Worth(Length.metres(290), euros("15.50")));
    assertThat(book.worth(A, StockValue::isInTheHouse)).contains(new Worth(Length.metres(240), euros("8.00")));
  }

  @Test
  void aReversalMovesBackWhatItsOriginalMovedEvenAfterOtherYarnCameBetween() {
    // Drawn at 3.33 the 100 m; then 200 m are found free, so that a metre on the shelf costs less; the reversal still brings 3.33 back.
    CostBook book = new Ledger().receive(A, 300).draw(A, 100).found(A, 200).reverse(2).book(paid(A, "10.00"));
    assertCost(book, A, SHELF, 500, "10.00");
    CostBook partly = new Ledger().receive(A, 300).draw(A, 100).draw(A, 200).reverse(2).book(paid(A, "10.00"));
    assertCost(partly, A, SHELF, 100, "3.33");
    assertCost(partly, A, LOOM, 200, "6.67");
  }

  @Test
  void aReceiptTakenBackAndMadeAnewBringsTheWholeCost() {
    CostBook book = new Ledger().receive(A, 3000).reverse(1).receive(A, 300).book(paid(A, "10.00"));
    assertCost(book, A, SHELF, 300, "10.00");
    assertThat(book.toCome()).isEmpty();
    CostBook gone = new Ledger().receive(A, 3000).reverse(1).book(paid(A, "10.00"));
    assertThat(gone.held()).isEmpty();
    assertThat(gone.toCome()).isEqualTo(paid(A, "10.00"));
  }

  @Test
  void aSkeinThatComesInPartsBringsItsCostInProportionAndAllOfItInTheEnd() {
    Ledger ledger = new Ledger().on(1).receive(A, 100).on(2).receive(A, 100).on(3).receive(A, 100);
    CostBook first = CostBook.upTo(LocalDate.of(2026, 3, 1), CurrencyUnit.EUR, ledger.entries(), paid(A, "10.00"));
    assertCost(first, A, SHELF, 100, "3.33");
    assertThat(first.toCome()).isEqualTo(paid(A, "6.67"));
    assertCost(ledger.book(paid(A, "10.00")), A, SHELF, 300, "10.00");
  }

  @Test
  void yarnOnOrderHasItsCostThereUntilItComes() {
    Ledger ledger = new Ledger().move(EntryKind.EXPECT, A, MAKER, ORDERED, 300);
    assertCost(ledger.book(paid(A, "10.00")), A, ORDERED, 300, "10.00");
    assertCost(ledger.move(EntryKind.RECEIVE, A, ORDERED, SHELF, 300).book(paid(A, "10.00")), A, SHELF, 300, "10.00");
  }

  @Test
  void whatIsFirstFoundOfASkeinWrittenDownWithoutALengthIsWhatCame() {
    CostBook book = new Ledger().found(A, 250).found(A, 50).lost(A, 30).book(paid(A, "10.00"));
    assertCost(book, A, SHELF, 270, "9.00");
    assertCost(book, A, RECOUNT, 30, "1.00");
  }

  @Test
  void yarnThatIsWoundOffGivesItsCostToWhatItIsWoundOntoByLengthAndUndoneGetsItBack() {
    Ledger ledger = new Ledger().receive(A, 300).add(
        EntryKind.REWIND, new Transfer(A, SHELF, new Place.Rewound(), Length.metres(150)), new Transfer(B, new Place.Rewound(), SHELF, Length.metres(100)),
        new Transfer("C", new Place.Rewound(), SHELF, Length.metres(50)));
    CostBook book = ledger.book(paid(A, "10.00"));
    assertCost(book, B, SHELF, 100, "3.33");
    assertCost(book, "C", SHELF, 50, "1.67");
    assertThat(book.unknown()).isEmpty();
    assertThat(ledger.reverse(2).book(paid(A, "10.00")).held()).isEqualTo(new Ledger().receive(A, 300).book(paid(A, "10.00")).held());
  }

  @Test
  void aSkeinOfUnknownCostIsNamedAndCountsNowhere() {
    CostBook book = new Ledger().receive(A, 300).receive(B, 50).draw(B, 20).book(paid(A, "10.00"));
    assertThat(book.unknown()).containsExactly(B);
    assertThat(book.worth(B, _ -> true)).isEmpty();
    assertThat(book.worth(_ -> true)).isEqualTo(new Worth(Length.metres(300), euros("10.00")));
    assertThat(book.withoutCost(StockValue::isInTheHouse)).isEqualTo(Length.metres(50));
  }

  @Test
  void onADayBeforeItsYarnCameAnEntryDatedEarlierMovesNothing() {
    Ledger ledger = new Ledger().on(5).receive(A, 300).on(3).draw(A, 100).on(9).giveBack(A, 40);
    assertThat(CostBook.upTo(LocalDate.of(2026, 3, 4), CurrencyUnit.EUR, ledger.entries(), paid(A, "10.00")).held()).isEmpty();
    assertCost(CostBook.upTo(LocalDate.of(2026, 3, 6), CurrencyUnit.EUR, ledger.entries(), paid(A, "10.00")), A, LOOM, 100, "3.33");
  }

  @Test
  void whatWasPaidIsShelfAndOrdersAndPlansAndLosses() {
    CostBook book = new Ledger().receive(A, 300).draw(A, 90).part(A, 30).lost(A, 15).move(EntryKind.WOVEN, A, LOOM, CLOTH, 60).book(Map.of(A, euros("10.00"), B, euros("4.00")));
    PaidFor paid = PaidFor.of(book, euros("14.00"));
    assertThat(paid.paid()).isEqualTo(euros("10.00")).isEqualTo(paid.accounted());
    assertThat(paid.toCome()).isEqualTo(euros("4.00"));
    assertThat(paid.shelf()).isEqualTo(euros("5.50"));
    assertThat(paid.plans()).isEqualTo(Map.of("Scarf", Map.of(Place.Kind.LOOM, euros("1.00"), Place.Kind.CLOTH, euros("2.00"))));
    assertThat(paid.plan("Scarf")).isEqualTo(euros("3.00"));
    assertThat(paid.lost()).containsEntry(Place.Kind.AWAY, euros("1.00")).containsEntry(Place.Kind.RECOUNT, euros("0.50"));
  }

  @Test
  void anotherCurrencyIsRefused() {
    assertThatThrownBy(() -> CostBook.of(CurrencyUnit.EUR, new Ledger().receive(A, 300).entries(), Map.of(A, Money.parse("GBP 10.00"))))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found 'GBP 10.00', wanted a cost in EUR");
  }

  private static void assertCost(CostBook book, String skein, Place place, long metres, String cost) {
    assertThat(book.held().get(new Holding(skein, place))).isEqualTo(new Worth(Length.metres(metres), euros(cost)));
  }
}
