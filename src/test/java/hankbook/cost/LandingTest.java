package hankbook.cost;

import static hankbook.cost.Bills.EUR;
import static hankbook.cost.Bills.SEK;
import static hankbook.cost.Bills.bill;
import static hankbook.cost.Bills.byMass;
import static hankbook.cost.Bills.byValue;
import static hankbook.cost.Bills.eur;
import static hankbook.cost.Bills.foreign;
import static hankbook.cost.Bills.landed;
import static hankbook.cost.Bills.line;
import static hankbook.cost.Bills.ofGrams;
import static hankbook.cost.Bills.ofMetres;
import static hankbook.cost.Bills.plain;
import static hankbook.cost.Bills.sek;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Bills worked by hand: what every line and skein cost with all that was paid to have it. */
class LandingTest {
  private static final PurchaseLine FINE = line("Three skeins, fine", eur("60.00"), "A1", "A2", "A3");
  private static final PurchaseLine COARSE = line("A cone, coarse", eur("40.00"), "B1");
  private static final Parcel PARCEL = ofGrams(Map.of("A1", 100, "A2", 100, "A3", 100, "B1", 900));
  private static final Charge NOTHING = byValue(eur("0"));

  /** 12.00 over 60 and 40 is 7.20 and 4.80; over 300 g and 900 g it is 3.00 and 9.00. */
  @Test
  void carriageByValueAndByMassFallsOnOtherLines() {
    LandedPurchase byValue = landed(bill(byValue(eur("12.00")), NOTHING, NOTHING, FINE, COARSE), PARCEL);
    assertThat(byValue.lines()).extracting(LandedLine::carriage).containsExactly(eur("7.20"), eur("4.80"));
    assertThat(byValue.lines()).extracting(LandedLine::landed).containsExactly(eur("67.20"), eur("44.80"));
    assertThat(byValue.skeins()).extracting(LandedSkein::cost).containsExactly(eur("22.40"), eur("22.40"), eur("22.40"), eur("44.80"));
    LandedPurchase byMass = landed(bill(byMass(eur("12.00")), NOTHING, NOTHING, FINE, COARSE), PARCEL);
    assertThat(byMass.lines()).extracting(LandedLine::carriage).containsExactly(eur("3.00"), eur("9.00"));
    assertThat(byMass.lines()).extracting(LandedLine::landed).containsExactly(eur("63.00"), eur("49.00"));
    assertThat(byMass.total()).isEqualTo(byValue.total()).isEqualTo(eur("112.00"));
  }

  /** 60 + 3.00 + 6.00 - 3.00 and 40 + 9.00 + 4.00 - 2.00. */
  @Test
  void dutyIsAddedAndADiscountIsTakenOffEachByItsOwnBasis() {
    LandedPurchase landed = landed(bill(byMass(eur("12.00")), byValue(eur("10.00")), byValue(eur("5.00")), FINE, COARSE), PARCEL);
    assertThat(landed.lines()).extracting(LandedLine::duty).containsExactly(eur("6.00"), eur("4.00"));
    assertThat(landed.lines()).extracting(LandedLine::discount).containsExactly(eur("3.00"), eur("2.00"));
    assertThat(landed.lines()).extracting(LandedLine::landed).containsExactly(eur("66.00"), eur("51.00"));
    assertThat(landed.total()).isEqualTo(eur("117.00"));
  }

  /** A third of a euro is 33 cents and a third; the cent that is left goes to the first of equals, else to the largest remainder. */
  @Test
  void whatDoesNotDivideGoesToTheLargestRemainders() {
    LandedPurchase equal = landed(plain(line("Three", eur("10.00"), "A1", "A2", "A3")), PARCEL);
    assertThat(equal.skeins()).extracting(LandedSkein::cost).containsExactly(eur("3.34"), eur("3.33"), eur("3.33"));
    // 0.05 over 10, 20 and 40: 0.714, 1.429 and 2.857 cents.
    LandedPurchase unequal = landed(
        bill(byValue(eur("0.05")), NOTHING, NOTHING, line("a", eur("10"), "A1"), line("b", eur("20"), "A2"), line("c", eur("40"), "A3")), PARCEL);
    assertThat(unequal.lines()).extracting(LandedLine::carriage).containsExactly(eur("0.01"), eur("0.01"), eur("0.03"));
  }

  /** 3 x 33.35 SEK is 100.05 SEK; at 0.0884 that is 8.84442, so 8.84 EUR in all, and 2.95, 2.95, 2.94; each turned alone would be 2.95. */
  @Test
  void aForeignTotalIsTurnedOnceAndThenShared() {
    Purchase purchase =
        foreign("0.0884", byValue(sek("0")), byValue(sek("0")), line("a", sek("33.35"), "A1"), line("b", sek("33.35"), "A2"), line("c", sek("33.35"), "A3"));
    LandedPurchase landed = landed(purchase, PARCEL);
    assertThat(landed.total()).isEqualTo(eur("8.84"));
    assertThat(landed.lines()).extracting(LandedLine::landed).containsExactly(eur("2.95"), eur("2.95"), eur("2.94"));
    assertThat(landed.home()).isEqualTo(EUR);
  }

  /** 1000 SEK and 200 SEK carriage at 0.09 are 108 EUR; 12 EUR of duty were paid at the door. */
  @Test
  void dutyOnAForeignParcelMayBePaidAtHome() {
    Purchase purchase = foreign("0.09", byValue(sek("200")), byValue(eur("12")), line("a", sek("750"), "A1"), line("b", sek("250"), "A2"));
    LandedPurchase landed = landed(purchase, PARCEL);
    assertThat(landed.lines()).extracting(LandedLine::carriage).containsExactly(sek("150"), sek("50"));
    assertThat(landed.lines()).extracting(LandedLine::duty).containsExactly(eur("9"), eur("3"));
    assertThat(landed.lines()).extracting(LandedLine::landed).containsExactly(eur("90"), eur("30"));
  }

  @Test
  void aLineIsSharedAsItsSkeinsWereSoldAndElseAsTheyCame() {
    PurchaseLine two = line("Two", eur("30.00"), "A1", "A2");
    Parcel alike = new Parcel(Map.of("A1", ofMetres(100, 98), "A2", ofMetres(100, 103)));
    assertThat(landed(plain(two), alike).skeins()).extracting(LandedSkein::cost).containsExactly(eur("15.00"), eur("15.00"));
    Received unlabelled = new Received(Optional.empty(), Optional.of(Length.metres(200)), Optional.of(Mass.grams(50)));
    Parcel unlike = new Parcel(Map.of("A1", ofMetres(100, 100), "A2", unlabelled));
    assertThat(landed(plain(two), unlike).skeins()).extracting(LandedSkein::cost).containsExactly(eur("10.00"), eur("20.00"));
    assertThat(landed(plain(two), ofGrams(Map.of("A1", 400, "A2", 200))).skeins()).extracting(LandedSkein::cost).containsExactly(eur("20.00"), eur("10.00"));
    assertThat(landed(plain(two), ofGrams(Map.of("A1", 400))).skeins()).extracting(LandedSkein::cost).containsExactly(eur("15.00"), eur("15.00"));
  }

  @Test
  void yarnThatWasGivenStillBearsItsCarriage() {
    LandedPurchase landed = landed(bill(byValue(eur("5.00")), NOTHING, NOTHING, line("a", eur("0"), "A1"), line("b", eur("0"), "B1")), PARCEL);
    assertThat(landed.skeins()).extracting(LandedSkein::cost).containsExactly(eur("2.50"), eur("2.50"));
  }

  @Test
  void aMassThatIsNotKnownIsNamed() {
    Purchase purchase = bill(byMass(eur("12.00")), NOTHING, NOTHING, FINE, COARSE);
    assertThatThrownBy(() -> landed(purchase, ofGrams(Map.of("A1", 100, "B1", 900))))
        .isInstanceOf(Unreadable.class)
        .hasMessageStartingWith("found 'A2, A3', wanted skeins whose mass is known");
  }

  @Test
  void aDiscountTakesNoMoreOffThanThereIs() {
    assertThatThrownBy(() -> bill(NOTHING, NOTHING, byValue(eur("100.01")), FINE, COARSE))
        .hasMessage("found '100.01 EUR', wanted a discount of at most 100.00 EUR, which is what the lines cost");
    assertThat(landed(bill(NOTHING, NOTHING, byValue(eur("100")), FINE, COARSE), PARCEL).total()).isEqualTo(eur("0"));
    assertThatThrownBy(() -> landed(bill(NOTHING, NOTHING, byMass(eur("80")), FINE, COARSE), PARCEL))
        .hasMessage("found '60.00 EUR', wanted a discount of which no line bears more than it costs; 'A cone, coarse' costs 40.00 EUR");
  }

  @Test
  void aForeignPurchaseHasARateAndOneAtHomeHasNone() {
    Purchase purchase = foreign("0.09", byValue(sek("0")), byValue(sek("0")), line("a", sek("750"), "A1"));
    assertThatThrownBy(() -> Landing.of(purchase, SEK, PARCEL, Map.of())).hasMessage("found '0.09', wanted no rate, since SEK is the currency of this ledger");
    assertThatThrownBy(() -> Landing.of(plain(FINE), SEK, PARCEL, Map.of()))
        .hasMessage("found nothing, wanted rate and rateDate: what 1 EUR was worth on a day in SEK, the currency of this ledger");
    assertThatThrownBy(() -> landed(foreign("0.09", byValue(Money.parse("USD 5")), byValue(sek("0")), line("a", sek("750"), "A1")), PARCEL))
        .hasMessage("found '5.00 USD', wanted an amount in SEK or EUR");
    assertThatThrownBy(() -> plain(line("a", sek("750"), "A1"))).hasMessage("found '750.00 SEK', wanted an amount in EUR, the currency of the purchase");
    assertThatThrownBy(() -> landed(foreign("1000000", byValue(sek("0")), byValue(sek("0")), line("a", sek("900000000"), "A1")), PARCEL))
        .hasMessageContaining("wanted a purchase of at most 1000000000");
  }

  @Test
  void whatIsNoPurchaseIsRefused() {
    assertThatThrownBy(() -> plain()).hasMessage("found nothing, wanted at least one line");
    assertThatThrownBy(() -> line("a", eur("5"))).hasMessage("found nothing, wanted the codes of the skeins that were paid for, at least one");
    assertThatThrownBy(() -> line("a", eur("5"), "A1", "A1")).hasMessage("found 'A1', wanted each skein once, since it is paid for once");
    assertThatThrownBy(() -> plain(FINE, line("again", eur("5"), "A1"))).hasMessage("found 'A1', wanted each skein in one line, since it is paid for once");
    for (String rate : List.of("0", "-1", "1e3", "1000001", "0.0000000000001", "")) {
      assertThatThrownBy(() -> ExchangeRate.parse(rate, Bills.DAY)).as(rate).isInstanceOf(Unreadable.class);
    }
  }

  /** 19.80 EUR for 1600 m are 0.012375 EUR a metre; for 350 g they are 56.57 EUR a kilogram. */
  @Test
  void unitPricesHaveTheDigitsThatCount() {
    assertThat(UnitPrice.ofMetre(eur("19.80"), Length.metres(1600)).text()).isEqualTo("0.01238");
    assertThat(UnitPrice.ofMetre(eur("16.00"), Length.metres(1600)).text()).isEqualTo("0.01000");
    assertThat(UnitPrice.ofKilogram(eur("19.80"), Mass.grams(350)).text()).isEqualTo("56.57");
    assertThat(UnitPrice.ofKilogram(eur("1234.56"), Mass.grams(100)).text()).isEqualTo("12345.60");
    assertThat(UnitPrice.ofMetre(eur("0"), Length.metres(5)).text()).isEqualTo("0.00");
    assertThat(UnitPrice.ofMetre(eur("19.80"), Length.metres(1600)).decimal(6)).isEqualByComparingTo("0.012375");
  }
}
