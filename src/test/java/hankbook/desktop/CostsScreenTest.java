package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.PaidFor;
import hankbook.cost.ValueMethod;
import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.studio.NotDone;
import hankbook.studio.PartWith;
import hankbook.studio.Purchases;
import hankbook.studio.Receive;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import hankbook.studio.Value;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Three skeins came on one day and one of unknown price lay there before; their bill is entered, looked at, corrected and taken back. */
class CostsScreenTest extends ScreenTest {
  private static final String STOCK = """
      code,yarn,colour,hex,fibre,grist,length,received,location
      K1,Skerry 16/2,Chalk,#f4f1e8,cotton,16/2 cotton,1600 m,2026-03-02,Left shelf
      K2,Skerry 16/2,Woad,#2f5d8a,cotton,16/2 cotton,1600 m,2026-03-02,Left shelf
      K3,Harbour 4/2,Slate,#5b6770,wool,Nm 4/2,400 m,2026-03-02,Chest
      K9,Old find,Grey,,,,250 m,,Chest
      """;

  @Override
  void fill(Studio blank) throws NotDone {
    try {
      new Receive(blank).file("stock.csv", STOCK);
    } catch (BadInput broken) {
      throw new IllegalStateException(broken);
    }
  }

  @BeforeEach
  void goToTheCosts() {
    press(KeyCode.CONTROL, KeyCode.DIGIT6).release(KeyCode.DIGIT6, KeyCode.CONTROL);
    settle();
  }

  @Test
  void aBillWithCarriageIsEnteredTheStockIsWorthItAndACorrectionChangesBoth() throws NotDone {
    enterTheBill();
    assertThat(textOf("#purchase-sum")).isEqualTo("Paid 60.00 EUR = 60.00 EUR over the 3 skeins.");
    clickOn("#purchase-enter");
    settle();
    assertThat(textOf("#status")).isEqualTo("Entered the purchase of 2026-03-14: 60.00 EUR for 3 skeins.");
    assertThat(cost("K1").plus(cost("K2")).plus(cost("K3"))).isEqualTo(Money.parse("EUR 60.00"));
    assertThat(cost("K3")).as("18 of 54, and a third of the carriage").isEqualTo(Money.parse("EUR 20.00"));

    new PartWith(studio()).skein(UUID.randomUUID(), "K3", Length.metres(100), "a gift");
    clickOn("#costs-value-of-the-stock");
    settle();
    assertThat(values()).containsExactly("Harbour 4/2 Slate 15.00", "Skerry 16/2 Chalk 20.00", "Skerry 16/2 Woad 20.00");
    assertThat(textOf("#value-total")).startsWith("In all 55.00 EUR for 3\u202f500.0 m");
    assertThat(textOf("#value-without")).startsWith("Without a known cost, not in this: 1 skein, 250.0 m (K9 250.0 m)");
    assertThat(textOf("#paid-sum")).isEqualTo("Paid 60.00 EUR = 60.00 EUR in all of these.");

    clickOn("#costs-purchases");
    settle();
    interact(() -> lookup("#purchases").queryTableView().getSelectionModel().selectFirst());
    clickOn("#correct-purchase");
    settle();
    type("#correction-carriage", "12");
    type("#correction-reason", "the carriage was more");
    clickOn("#correction-enter");
    settle();
    assertThat(textOf("#purchase-state")).startsWith("Corrected: the carriage was more.");
    assertThat(new Purchases(studio()).numbered(1).kept().landed().total()).isEqualTo(Money.parse("EUR 66.00"));
    clickOn("#costs-value-of-the-stock");
    settle();
    assertThat(textOf("#value-total")).startsWith("In all 60.50 EUR");
    assertThat(textOf("#paid-sum")).isEqualTo("Paid 66.00 EUR = 66.00 EUR in all of these.");
  }

  @Test
  void aHalfTypedBillIsThereAfterOtherScreensAndTheWindowDoesNotCloseOverItUnasked() {
    type("#purchase-from", "Harbour Mill");
    clickOn("#purchase-line-1-choose");
    clickOn("#purchase-line-1-day-2026-03-02");
    settle();
    clickOn("#go-plans").clickOn("#go-costs");
    settle();
    assertThat(lookup("#purchase-from").queryAs(TextField.class).getText()).isEqualTo("Harbour Mill");
    assertThat(lookup("#purchase-line-1-out-K2").tryQuery()).isPresent();
    assertThat(allIsKept()).isFalse();
    clickOn("#purchase-clear");
    settle();
    assertThat(allIsKept()).isTrue();
  }

  @Test
  void aPurchaseIsTakenBackWithAReasonByKeyboardAloneAndIsMarkedByWord() {
    enterTheBill();
    clickOn("#purchase-enter");
    settle();
    interact(() -> lookup("#purchases").queryTableView().requestFocus());
    press(KeyCode.HOME).release(KeyCode.HOME);
    settle();
    assertThat(textOf("#purchase-title")).isEqualTo("Purchase 1");
    interact(() -> lookup("#take-back-reason").query().requestFocus());
    write("paid twice\n");
    settle();
    assertThat(textOf("#purchase-state")).startsWith("Taken back: paid twice.");
    assertThat(lookup("#correct-purchase").queryAs(Button.class).isDisabled()).isTrue();
    assertThat(lookup("#purchases").<PurchaseRow>queryTableView().getItems()).extracting(PurchaseRow::state).containsExactly("taken back");
    assertThat(new Shelf(studio()).skein("K1").orElseThrow().skein().cost()).isEmpty();
  }

  @Test
  void theStockIsLookedAtByOtherMethodsGroupsAndDaysAndOneMethodIsAdopted() {
    enterTheBill();
    clickOn("#purchase-enter");
    clickOn("#costs-value-of-the-stock");
    settle();
    assertThat(textOf("#value-meaning")).startsWith("Identified cost. ").endsWith("In force in this ledger.");
    clickOn("#value-by-location");
    settle();
    assertThat(values()).containsExactly("Chest 20.00", "Left shelf 40.00");
    clickOn("#value-method-average");
    settle();
    assertThat(textOf("#value-meaning")).startsWith("Weighted average. ").endsWith("Only looked at: in force is identified cost.");
    clickOn("#value-adopt");
    settle();
    assertThat(textOf("#value-meaning")).endsWith("In force in this ledger.");
    assertThat(new Value(studio()).stock(Optional.empty(), Optional.empty()).getFirst().value().method()).isEqualTo(ValueMethod.AVERAGE);
    type("#value-on", "2026-03-15");
    assertThat(lookup("That day is yet to come.").query().isVisible()).isTrue();
    type("#value-on", "2026-03-01");
    settle();
    assertThat(values()).as("nothing had come by then").isEmpty();
  }

  @Test
  void aBlankBookSaysWhatAPurchaseIsAndTheValueLeadsToTheForm() {
    assertThat(lookup("No purchase yet").query().isVisible()).isTrue();
    clickOn("#costs-value-of-the-stock");
    settle();
    clickOn("#value-enter");
    settle();
    assertThat(lookup("#purchase-date").query().isFocused()).isTrue();
  }

  @Test
  void whatIsPaidGoesIntoPartsThatSumToIt() {
    enterTheBill();
    clickOn("#purchase-enter");
    settle();
    PaidFor paid = new Value(studio()).stock(Optional.empty(), Optional.empty()).getFirst().paid();
    List<PaidLine> lines = PaidLine.of(paid);
    assertThat(Money.total(lines.stream().filter(PaidLine::sum).map(PaidLine::amount).toList())).isEqualTo(paid.paid());
    assertThat(Money.total(lines.stream().filter(line -> !line.sum()).map(PaidLine::amount).toList())).isEqualTo(paid.accounted());
  }

  /** The least contrast for text, WCAG 2.2, success criterion 1.4.3; what cannot be used is exempt. */
  @Test
  void everyTextOfTheCostsStandsOutInBothLooks() {
    enterTheBill();
    for (int look = 0; look < 2; look++) {
      clickOn("#purchase-line-1-choose");
      settle();
      assertThat(Contrast.tooFaint(lookup(".screen").query())).isEmpty();
      clickOn("#purchase-line-1-choose").clickOn("#costs-value-of-the-stock");
      settle();
      assertThat(Contrast.tooFaint(lookup(".screen").query())).isEmpty();
      clickOn("#costs-purchases");
      press(KeyCode.CONTROL, KeyCode.T).release(KeyCode.T, KeyCode.CONTROL);
      settle();
    }
  }

  /** Two cones at 18.00 and one skein at 18.00, with carriage of 6.00. */
  private void enterTheBill() {
    type("#purchase-currency", "EUR");
    type("#purchase-line-1-words", "2 cones Skerry 16/2");
    type("#purchase-line-1-price", "2 x 18");
    choose(1, "K1 K2");
    clickOn("#purchase-more");
    settle();
    type("#purchase-line-2-words", "Harbour 4/2");
    type("#purchase-line-2-price", "18.00");
    choose(2, "slate");
    type("#purchase-carriage", "6");
  }

  private void choose(int line, String words) {
    clickOn("#purchase-line-" + line + "-choose");
    settle();
    assertThat(lookup("#purchase-line-" + line + "-find").query().isFocused()).isTrue();
    write(words + "\n");
    settle();
    clickOn("#purchase-line-" + line + "-choose");
    settle();
  }

  private void type(String field, String text) {
    interact(() -> lookup(field).queryAs(TextField.class).setText(text));
    settle();
  }

  private List<String> values() {
    TableView<ValueLine> table = lookup("#value").queryTableView();
    return table.getItems().stream().map(line -> line.name() + " " + line.value()).toList();
  }

  private Money cost(String code) {
    return new Shelf(studio()).skein(code).orElseThrow().skein().cost().orElseThrow();
  }

  private boolean allIsKept() {
    AtomicReference<Boolean> kept = new AtomicReference<>(false);
    interact(() -> home().keep(kept::set));
    settle();
    return Boolean.TRUE.equals(kept.get());
  }
}
