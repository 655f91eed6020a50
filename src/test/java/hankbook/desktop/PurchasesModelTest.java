package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.allot.Setting;
import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedSkein;
import hankbook.cost.Purchase;
import hankbook.exchange.BadInput;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.Receive;
import hankbook.studio.Settings;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Purchases as they are typed, over a ledger file: a yarn that came on one day, one that came on another, and one of which nothing but a code is known. */
class PurchasesModelTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String STOCK = """
      code,yarn,colour,grist,length,cost,received
      A1,Skerry 16/2,Chalk,16/2 cotton,1600 m,,2026-03-02
      A2,Skerry 16/2,Chalk,16/2 cotton,800 m,,2026-03-02
      B1,Harbour 4/2,Slate,Nm 4/2,500 m,9.90 EUR,2026-02-20
      C1,Old find,Grey,,300 m,,
      """;

  @TempDir
  Path dir;

  private final Status status = new Status();
  private Studio studio;
  private PurchasesModel model;

  @BeforeEach
  void openWithFourSkeins() throws LedgerUnavailable, BadInput, NotDone {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada", NOON);
    new Receive(studio).file("stock.csv", STOCK);
    model = new PurchasesModel(studio, new Work(Runnable::run, Runnable::run), status, () -> {});
    model.refresh();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void carriageIsSharedToTheCoinWhileItIsTypedAndThatIsWhatTheSkeinsCostOnceItIsEntered() {
    typeBill("10.00", "A1", "A2");
    form().fields().field("carriage").set("0.01");
    Purchased live = form().landing().foundProperty().get().orElseThrow();
    assertThat(live.kept().landed().skeins()).extracting(LandedSkein::skein, LandedSkein::cost)
        .as("two thirds and one third of 10.01, by their lengths").containsExactly(skein("A1", "6.67"), skein("A2", "3.34"));
    assertThat(LandingPane.sum(live.kept())).isEqualTo("Paid 10.01 EUR = 10.01 EUR over the 2 skeins.");
    form().enter();
    assertThat(cost("A1")).contains(euro("6.67"));
    assertThat(cost("A2")).contains(euro("3.34"));
    assertThat(purchases()).extracting(Purchased::kept).extracting(KeptPurchase::landed).containsExactly(live.kept().landed());
    assertThat(status.lastProperty().get().text()).isEqualTo("Entered the purchase of 2026-03-14: 10.01 EUR for 2 skeins.");
    assertThat(form().halfTypedProperty().get()).isFalse();
    assertThat(model.rows()).extracting(PurchaseRow::landed).containsExactly("10.01 EUR");
    assertThat(model.summaryProperty().get()).isEqualTo("1 purchase; 2 skeins are in none");
  }

  @Test
  void whatIsTypedStaysWhenTheLedgerIsAskedAnewAndIsKnownToBeHalfTyped() {
    assertThat(model.halfTyped().get()).isFalse();
    form().fields().field("from").set("Harbour Mill");
    model.refresh();
    assertThat(form().fields().field("from").get()).isEqualTo("Harbour Mill");
    assertThat(model.halfTyped().get()).isTrue();
    assertThat(form().act().whyNotProperty().get()).isEqualTo("Still wanted: what was bought, the price, the skeins.");
    form().clear();
    assertThat(model.halfTyped().get()).isFalse();
  }

  @Test
  void allThatCameOnADayAreTakenAtOnceAndThoseInALineAreNotOfferedAgain() {
    PurchaseLineForm line = form().fields().lines().getFirst();
    assertThat(line.picker().days()).extracting(day -> day.getKey() + " " + day.getValue()).containsExactly("2026-03-02 2", "2026-02-20 1");
    line.picker().addDay(LocalDate.parse("2026-03-02"));
    assertThat(line.skeins()).containsExactly("A1", "A2");
    assertThat(line.picker().shown()).extracting(SkeinToPay::code).containsExactly("B1", "C1");
    line.remove("A1");
    assertThat(line.picker().shown()).extracting(SkeinToPay::code).containsExactly("A1", "B1", "C1");
  }

  @Test
  void skeinsAreTakenByTheirCodesOrByWordsThatOnlyOneAnswersTo() {
    SkeinPicker picker = form().fields().lines().getFirst().picker();
    picker.filterProperty().set("a2, b1");
    picker.enter();
    assertThat(form().fields().lines().getFirst().skeins()).containsExactly("A2", "B1");
    picker.filterProperty().set("grey");
    picker.enter();
    assertThat(form().fields().lines().getFirst().skeins()).containsExactly("A2", "B1", "C1");
    picker.filterProperty().set("b1");
    picker.enter();
    assertThat(picker.messageProperty().get()).isEqualTo("B1 is in this purchase already.");
    picker.filterProperty().set("S999");
    picker.enter();
    assertThat(picker.messageProperty().get()).isEqualTo("No skein that is still to be paid for answers to that.");
  }

  @Test
  void aSkeinThatAPurchasePaidForCannotBeTakenIntoAnotherOne() {
    typeBill("10", "A1");
    form().enter();
    SkeinPicker picker = form().fields().lines().getFirst().picker();
    picker.filterProperty().set("A1");
    picker.enter();
    assertThat(picker.messageProperty().get()).isEqualTo("A1 was paid for in purchase 1; correct that one, or take it back.");
  }

  @Test
  void anotherCurrencyWantsItsRateAndTheDayOfIt() {
    typeBill("100", "A1", "A2");
    assertThat(form().foreignProperty().get()).isFalse();
    form().fields().field("currency").set("gbp");
    assertThat(form().foreignProperty().get()).as("B1 was paid in EUR").isTrue();
    assertThat(form().rateNameProperty().get()).isEqualTo("1 GBP in EUR");
    assertThat(form().act().whyNotProperty().get()).isEqualTo("Still wanted: the rate, the day of the rate.");
    form().fields().field("rate").set("1.1765");
    form().fields().field("rateDate").set("2026-03-13");
    form().fields().field("carriage").set("5 EUR");
    form().enter();
    assertThat(model.rows().getFirst().total()).isEqualTo("100.00 GBP + 5.00 EUR");
    assertThat(model.rows().getFirst().landed()).isEqualTo("122.65 EUR");
  }

  @Test
  void aMassThatIsNotKnownIsToldBesideTheActAndNothingIsEntered() {
    typeBill("10", "A1");
    form().fields().addLine();
    PurchaseLineForm second = form().fields().lines().getLast();
    second.wordsProperty().set("a find");
    second.priceProperty().set("5");
    second.picker().filterProperty().set("C1");
    second.picker().enter();
    form().fields().field("carriage").set("3");
    form().fields().field("carriageBy").set("mass");
    assertThat(form().act().whyNotProperty().get())
        .isEqualTo("C1: wanted skeins whose mass is known, by a weighing or by their grist and length, to share by mass; weigh them, or share by value.");
    form().enter();
    assertThat(purchases()).isEmpty();
    form().fields().field("carriageBy").set("value");
    form().enter();
    assertThat(purchases()).hasSize(1);
  }

  @Test
  void aCorrectionKeepsWhatWasSaidBeforeAndASkeinThatIsDroppedCostsAgainWhatItDid() {
    typeBill("20", "A1", "B1");
    form().enter();
    model.choose(Optional.of(model.rows().getFirst()));
    model.correct();
    assertThat(model.correction().act().whyNotProperty().get()).isEqualTo("So it stands in the ledger; change what was wrong.");
    model.correction().fields().lines().getFirst().remove("B1");
    model.correction().reasonProperty().set("the other was a present");
    assertThat(model.halfTyped().get()).isTrue();
    model.correction().enter();
    assertThat(cost("A1")).contains(euro("20.00"));
    assertThat(cost("B1")).contains(euro("9.90"));
    assertThat(model.chosenProperty().get().orElseThrow().state()).isEqualTo("corrected");
    assertThat(model.correction().correctedProperty().get()).isEmpty();
    assertThat(status.lastProperty().get().text()).isEqualTo("Corrected purchase 1: 20.00 EUR for 1 skein.");
  }

  @Test
  void whatWasCorrectedMeanwhileIsNotUndoneAndWhatIsTypedStays() throws NotDone {
    typeBill("20", "A1");
    form().enter();
    model.choose(Optional.of(model.rows().getFirst()));
    model.correct();
    model.correction().fields().field("carriage").set("1");
    Purchase first = purchases().getFirst().kept().landed().purchase();
    new Purchases(studio).correct(1, new Purchase(first.date(), "Harbour Mill", first.currency(), first.lines(), first.carriage(), first.duty(), first.discount(), first.rate()), "");
    model.correction().enter();
    assertThat(status.lastProperty().get().text()).isEqualTo("Purchase 1 was corrected by Ada meanwhile; look at it again.");
    assertThat(purchases().getFirst().kept().landed().purchase().from()).isEqualTo("Harbour Mill");
    assertThat(cost("A1")).contains(euro("20.00"));
    assertThat(model.correction().fields().field("carriage").get()).isEqualTo("1");
  }

  @Test
  void aPurchaseIsCorrectedInTheCurrencyItWasEnteredInto() throws NotDone {
    typeBill("20", "A1");
    form().enter();
    new Settings(studio).set(Setting.CURRENCY, "SEK");
    model.refresh();
    model.choose(Optional.of(model.rows().getFirst()));
    model.correct();
    assertThat(model.correction().foreignProperty().get()).as("no rate is wanted").isFalse();
    model.correction().fields().field("carriage").set("1");
    model.correction().enter();
    assertThat(cost("A1")).contains(euro("21.00"));
  }

  @Test
  void oneCorrectionThatIsBegunIsFinishedOrLeftBeforeAnother() {
    typeBill("20", "A1");
    form().enter();
    typeBill("10", "B1");
    form().enter();
    model.choose(Optional.of(model.rows().getLast()));
    model.correct();
    model.correction().fields().field("from").set("Harbour Mill");
    model.choose(Optional.of(model.rows().getFirst()));
    assertThat(model.correctAct().whyNotProperty().get()).isEqualTo("Purchase 1 is being corrected; enter that first, or leave it.");
    model.correct();
    assertThat(model.correction().fields().field("from").get()).isEqualTo("Harbour Mill");
    model.correction().clear();
    assertThat(model.correctAct().isPossible()).isTrue();
  }

  @Test
  void aPurchaseIsTakenBackOnlyWithAReasonAndStaysInTheListByWord() {
    typeBill("20", "B1");
    form().enter();
    model.choose(Optional.of(model.rows().getFirst()));
    assertThat(model.takeBackAct().whyNotProperty().get()).isEqualTo("Say why it is taken back.");
    model.reasonProperty().set("it was sent back");
    model.takeBack();
    assertThat(cost("B1")).contains(euro("9.90"));
    assertThat(model.rows()).extracting(PurchaseRow::state).containsExactly("taken back");
    assertThat(model.correctAct().whyNotProperty().get()).isEqualTo("It was taken back.");
    assertThat(form().fields().lines().getFirst().picker().shown()).extracting(SkeinToPay::code).contains("B1");
  }

  private PurchaseForm form() {
    return model.another();
  }

  private void typeBill(String price, String... codes) {
    PurchaseLineForm line = form().fields().lines().getFirst();
    line.wordsProperty().set("yarn");
    line.priceProperty().set(price);
    line.picker().filterProperty().set(String.join(" ", codes));
    line.picker().enter();
  }

  private List<Purchased> purchases() {
    return new Purchases(studio).all();
  }

  private Optional<Money> cost(String code) {
    return new Shelf(studio).skein(code).orElseThrow().skein().cost();
  }

  private static Money euro(String amount) {
    return Money.parse("EUR " + amount);
  }

  private static Tuple skein(String code, String euros) {
    return tuple(code, euro(euros));
  }
}
