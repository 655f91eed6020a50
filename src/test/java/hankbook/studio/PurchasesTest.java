package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Setting;
import hankbook.exchange.BadInput;
import hankbook.exchange.PurchaseFile;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import hankbook.yarn.GristSample;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What was paid, and what every reader of a skein's cost sees of it, in either database. */
@ParameterizedClass
@EnumSource
class PurchasesTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String STOCK = """
      code,yarn,colour,grist,form,length,gross,tare,cost
      A1,Skerry 16/2,Chalk,tex 100,skein,1000 m,,,9.00 EUR
      A2,Skerry 16/2,Chalk,tex 100,skein,1000 m,,,9.00 EUR
      B1,Fjara,Ash,tex 400,cone,,1000 g,200 g,
      C1,Nameless,Grey,,ball,50 m,,,
      """;
  private static final String BILL = """
      { "format": "hankbook-purchase/1", "date": "2026-03-01", "from": "the fair", "currency": "EUR",
        "lines": [{"words": "Two skeins", "price": "20.00", "skeins": ["A1", "A2"]}, {"words": "A cone", "price": "20.00", "skeins": ["B1"]}],
        "carriage": "10.00", "carriageBy": "mass" }
      """;

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Studio studio;
  private Purchases purchases;

  PurchasesTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida", NOON);
    purchases = new Purchases(studio);
    new Receive(studio).file("stock.csv", STOCK);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  /** 200 g and 800 g: of 10.00 carriage 2.00 and 8.00; the cone holds 2000 m. */
  @Test
  void aPurchaseSaysWhatItsSkeinsCost() throws Exception {
    Purchased purchased = purchases.add("bill.json", BILL);
    assertThat(costs()).containsExactly("11.00", "11.00", "28.00", "");
    assertThat(purchased).isEqualTo(purchases.numbered(1));
    assertThat(purchased.perMetre(purchased.kept().landed().lines().getLast()).orElseThrow().text()).isEqualTo("0.01400");
    assertThat(purchased.perKilogram(purchased.kept().landed().lines().getLast()).orElseThrow().text()).isEqualTo("35.00");
    assertThat(purchases.thatPaidFor("B1")).contains(purchased);
    assertThat(purchases.thatPaidFor("C1")).isEmpty();
  }

  @Test
  void theSameBillTwiceIsOnePurchase() throws Exception {
    Purchased first = purchases.add("bill.json", BILL);
    assertThat(purchases.add("bill.json", BILL)).isEqualTo(first);
    assertThat(purchases.all()).containsExactly(first);
    assertThat(purchases.correct(1, "bill.json", BILL, "nothing new").kept().version()).isEqualTo(1);
  }

  @Test
  void aCorrectionPutsRightWhatItSaidAndWhatIsTakenBackCostsAsBefore() throws Exception {
    purchases.add("bill.json", BILL);
    Purchased corrected = purchases.correct(1, "bill.json", BILL.replace("[\"A1\", \"A2\"]", "[\"A1\"]").replace("mass", "value"), "one skein only");
    assertThat(corrected.kept().version()).isEqualTo(2);
    assertThat(costs()).as("A2 costs again what the stock file said").containsExactly("25.00", "9.00", "25.00", "");
    purchases.takeBack(1, "sent back");
    assertThat(costs()).containsExactly("9.00", "9.00", "", "");
    assertThat(purchases.all()).extracting(purchased -> purchased.kept().stands()).containsExactly(false);
    assertThatThrownBy(() -> purchases.takeBack(1, "again")).isInstanceOf(NotDone.class).hasMessage("Purchase 1 was taken back; enter it anew with purchase add.");
    assertThat(purchases.add("bill.json", BILL).kept().number()).as("entered anew").isEqualTo(2);
    assertThat(costs()).containsExactly("11.00", "11.00", "28.00", "");
  }

  @Test
  void aCorrectionOfWhatSomeoneElseCorrectedMeanwhileIsRefused() throws Exception {
    Purchased seen = purchases.add("bill.json", BILL);
    try (Studio mate = Studio.open(address, "Bo", NOON)) {
      new Purchases(mate).correct(1, "bill.json", BILL.replace("10.00", "5.00"), "half the carriage");
    }
    assertThatThrownBy(() -> purchases.correct(1, PurchaseFile.read("bill.json", BILL.replace("the fair", "Fjara")), "", seen.kept().version()))
        .isInstanceOf(NotDone.class)
        .hasMessage("Purchase 1 was corrected by Bo meanwhile; look at it again.");
    assertThat(costs()).as("2 x 10.50 and 24.00").containsExactly("10.50", "10.50", "24.00", "");
    assertThat(purchases.correct(1, PurchaseFile.read("bill.json", BILL), "", purchases.numbered(1).kept().version()).kept().version()).isEqualTo(3);
  }

  /** By mass the cone bears 8.00 of the carriage; now that the skeins' yarn is known to be twice as heavy it would bear 6.67. */
  @Test
  void wordsSellerAndDateMayBePutRightWithoutMovingACent() throws Exception {
    Purchased before = purchases.add("bill.json", BILL);
    new Grists(studio).weigh("Skerry 16/2", new GristSample(Length.metres(10), Mass.grams(2), new Mass(10), Length.parse("5 cm")));
    new Describe(studio).skeins(List.of("C1"), cost("EUR 5"));
    String said = BILL.replace("the fair", "Fjara").replace("A cone", "One cone").replace("2026-03-01", "2026-03-02");
    Purchased corrected = purchases.correct(1, "bill.json", said, "the day");
    assertThat(corrected.kept().version()).isEqualTo(2);
    assertThat(corrected.kept().landed().skeins()).isEqualTo(before.kept().landed().skeins());
    assertThat(corrected).isEqualTo(purchases.numbered(1));
    assertThat(corrected.kept().landed().lines().getLast().line().words()).isEqualTo("One cone");
    assertThat(costs()).containsExactly("11.00", "11.00", "28.00", "5.00");
  }

  @Test
  void aCorrectionStaysInTheCurrencyThatThePurchaseWasEnteredInto() throws Exception {
    purchases.add("bill.json", BILL);
    new Settings(studio).set(Setting.CURRENCY, "SEK");
    assertThat(purchases.correct(1, "bill.json", BILL.replace("10.00", "5.00"), "half the carriage").kept().landed().home().getCode()).isEqualTo("EUR");
    assertThat(costs()).containsExactly("10.50", "10.50", "24.00", "");
    String turned = BILL.replace("\"date\"", "\"rate\": \"10\", \"rateDate\": \"2026-02-28\", \"date\"");
    assertThat(purchases.correct(1, "bill.json", turned, "as the house reckons now").kept().landed().total()).isEqualTo(Money.parse("SEK 500"));
  }

  @Test
  void aSkeinIsPaidForOnce() throws Exception {
    purchases.add("bill.json", BILL);
    String other = BILL.replace("\"A1\", \"A2\"", "\"C1\", \"A2\"").replace("mass", "value");
    assertThatThrownBy(() -> purchases.add("other.json", other)).hasMessage("A2 was paid for in purchase 1 already, and is paid for once; correct that one, or take it back. Nothing was changed.");
    assertThat(costs().getLast()).isEmpty();
    assertThatThrownBy(() -> purchases.add("other.json", other.replace("A2", "X9"))).hasMessageStartingWith("There is no skein X9 in the ledger");
  }

  @Test
  void itsCostIsNotSaidBesideIt() throws Exception {
    purchases.add("bill.json", BILL);
    assertThatThrownBy(() -> new Describe(studio).skeins(List.of("C1", "A1"), cost("EUR 5")))
        .isInstanceOf(NotDone.class)
        .hasMessage("The cost of A1: found '5.00 EUR', wanted the cost that purchase 1 gives it; to change that, purchase correct 1. Nothing was changed.");
    assertThat(costs()).as("of all or of none").containsExactly("11.00", "11.00", "28.00", "");
    assertThat(new Describe(studio).skeins(List.of("C1"), cost("EUR 5"))).isEqualTo(1);
    assertThat(new Describe(studio).skeins(List.of("A1"), cost("EUR 11"))).as("what it is").isZero();
    assertThat(new Receive(studio).file("stock.csv", STOCK).alreadyThere()).as("the file it came with").isEqualTo(4);
    assertThat(costs().getFirst()).isEqualTo("11.00");
  }

  @Test
  void yarnThatWasPaidWhileOnOrderKeepsItsCostWhenItComes() throws Exception {
    String order = "code,yarn,colour,length,cost\nD1,Skerry 16/2,Woad,500 m,18.00 EUR\n";
    new Expect(studio).file("order.csv", order, LocalDate.of(2026, 3, 20));
    purchases.add("bill.json", BILL.replace("\"A1\", \"A2\"", "\"D1\"").replace("mass", "value"));
    String came = "code,yarn,colour,length,cost,lot\nD1,Skerry 16/2,Woad,500 m,18.00 EUR,B7\n";
    assertThatThrownBy(() -> new Receive(studio).file("came.csv", came.replace("18", "19")))
        .isInstanceOf(BadInput.class)
        .hasMessage("came.csv, row 2, cost: found '19.00 EUR', wanted the cost that purchase 1 gives it; to change that, purchase correct 1");
    assertThat(new Receive(studio).file("came.csv", came).received()).isEqualTo(1);
    assertThat(new Receive(studio).file("came.csv", came).alreadyThere()).as("once more").isEqualTo(1);
    assertThat(new Shelf(studio).everySkein().getLast().skein().cost()).contains(Money.parse("EUR 25"));
    assertThat(new Shelf(studio).everySkein().getLast().skein().lot()).isEqualTo("B7");
  }

  @Test
  void aLedgerReckonsInOneCurrency() throws Exception {
    String more = "code,yarn,colour,length,cost\nD1,Skerry 16/2,Woad,500 m,18.00 SEK\n";
    String wanted = "cost: found '18.00 SEK', wanted an amount in EUR, the currency of this ledger; leave it out, and enter what was paid and its rate with purchase add";
    assertThatThrownBy(() -> new Receive(studio).file("more.csv", more)).hasMessage("more.csv, row 2, " + wanted);
    assertThatThrownBy(() -> new Expect(studio).file("more.csv", more, LocalDate.of(2026, 3, 20))).hasMessage("more.csv, row 2, " + wanted);
    assertThatThrownBy(() -> new Describe(studio).skeins(List.of("C1"), cost("SEK 5"))).isInstanceOf(NotDone.class).hasMessageContaining("wanted an amount in EUR");
    new Receive(studio).file("more.csv", more.replace("18.00 SEK", ""));
    String abroad = BILL.replace("\"A1\", \"A2\"", "\"D1\"").replace("\"EUR\"", "\"SEK\"").replace("mass", "value");
    assertThatThrownBy(() -> purchases.add("bill.json", abroad))
        .isInstanceOf(BadInput.class)
        .hasMessage("bill.json: found nothing, wanted rate and rateDate: what 1 SEK was worth on a day in EUR, the currency of this ledger");
    Purchased turned = purchases.add("bill.json", abroad.replace("\"date\"", "\"rate\": \"0.0900\", \"rateDate\": \"2026-02-28\", \"date\""));
    assertThat(turned.kept().landed().total()).as("50.00 SEK").isEqualTo(Money.parse("EUR 4.50"));
    assertThat(turned.kept().landed().purchase().rate().orElseThrow().text()).isEqualTo("0.0900");
    assertThat(purchases.homeCurrency().getCode()).isEqualTo("EUR");
  }

  @Test
  void theCurrencyMayBeSetAndTheFirstThatIsPaidDecidesItElse() throws Exception {
    Path other = folder.resolve("other");
    assertThat(other.toFile().mkdir()).isTrue();
    try (Studio fresh = Studio.open(vendor.ledger(other), "Ida", NOON)) {
      String rows = "code,yarn,colour,length,cost\nD1,Skerry 16/2,Woad,500 m,18.00 SEK\nD2,Skerry 16/2,Woad,500 m,%s\n";
      assertThatThrownBy(() -> new Receive(fresh).file("a.csv", rows.formatted("5.00 EUR"))).hasMessageStartingWith("a.csv, row 3, cost: found '5.00 EUR', wanted an amount in SEK");
      new Settings(fresh).set(Setting.CURRENCY, "eur");
      assertThatThrownBy(() -> new Receive(fresh).file("a.csv", rows.formatted("5.00 EUR"))).hasMessageStartingWith("a.csv, row 2, cost: found '18.00 SEK', wanted an amount in EUR");
      new Settings(fresh).set(Setting.CURRENCY, "as paid");
      new Receive(fresh).file("a.csv", rows.formatted("5.00 SEK"));
      assertThat(new Purchases(fresh).homeCurrency().getCode()).isEqualTo("SEK");
    }
  }

  @Test
  void aLedgerThatHasSeveralCurrenciesFromBeforeWorksOn() throws Exception {
    studio.close();
    Vendor.run(address,
        "insert into skein (code, yarn, colour, hex, fibre, form, opened, lot, location, cost_minor, currency, recorded_at)"
            + " values ('D1', 'Fjara', 'Rust', '', 'wool', 'SKEIN', false, '', '', 1800, 'SEK', timestamp with time zone '2026-03-01 12:00:00+00')");
    studio = Studio.open(address, "Ida", NOON);
    purchases = new Purchases(studio);
    assertThat(purchases.homeCurrency().getCode()).as("the commonest").isEqualTo("EUR");
    assertThat(new Describe(studio).skeins(List.of("D1"), new SkeinFacts(Optional.of("B7"), Optional.empty(), Optional.empty(), Optional.empty()))).isEqualTo(1);
    assertThat(new Describe(studio).skeins(List.of("D1"), cost("SEK 18"))).as("it is said so already").isZero();
    purchases.add("bill.json", BILL.replace("\"B1\"", "\"D1\"").replace("mass", "value"));
    assertThat(costs().getLast()).isEqualTo("25.00");
    purchases.takeBack(1, "another bill");
    assertThat(costs().getLast()).isEqualTo("18.00");
    assertThat(new Shelf(studio).everySkein().getLast().skein().cost()).contains(Money.parse("SEK 18"));
  }

  @Test
  void whatIsYetToComeOrNotWeighedIsRefusedAndNothingIsDone() {
    assertThatThrownBy(() -> purchases.add("bill.json", BILL.replace("2026-03-01", "2026-03-15"))).isInstanceOf(NotDone.class).hasMessageContaining("yet to come");
    assertThatThrownBy(() -> purchases.add("bill.json", BILL.replace("\"B1\"", "\"C1\"")))
        .isInstanceOf(BadInput.class)
        .hasMessageStartingWith("bill.json: found 'C1', wanted skeins whose mass is known");
    assertThatThrownBy(() -> purchases.takeBack(1, "slip")).hasMessage("There is no purchase 1; purchase list shows those there are.");
    assertThatThrownBy(() -> purchases.takeBack(1, " ")).hasMessageStartingWith("Say why");
    assertThat(purchases.all()).isEmpty();
    assertThat(costs()).containsExactly("9.00", "9.00", "", "");
  }

  /** Measuring a skein again changes what a metre cost, by what came, only where it came otherwise; never what was paid. */
  @Test
  void aRecountLeavesWhatWasPaid() throws Exception {
    Purchased before = purchases.add("bill.json", BILL);
    new Recount(studio).skein(UUID.randomUUID(), "B1", Length.metres(1900), "");
    assertThat(purchases.numbered(1)).isEqualTo(before);
  }

  private static SkeinFacts cost(String money) {
    return new SkeinFacts(Optional.empty(), Optional.empty(), Optional.of(Money.parse(money)), Optional.empty());
  }

  /** By code; empty where none is known. */
  private List<String> costs() {
    return new Shelf(studio).everySkein().stream().map(held -> held.skein().cost().map(cost -> cost.getAmount().toPlainString()).orElse("")).toList();
  }
}
