package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Expect;
import hankbook.studio.ExpectedBy;
import hankbook.studio.ExpectedSkein;
import hankbook.studio.NotDone;
import hankbook.studio.Plans;
import hankbook.studio.QueuePlans;
import hankbook.studio.QueuedPlan;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import hankbook.yarn.YarnColour;
import java.util.List;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The sample studio with two plans more, which want more Skerry Chalk in whole ends than it has. */
class AheadScreenTest extends ScreenTest {
  private static final YarnColour HARBOUR = new YarnColour("Harbour 4/2", "Slate");

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
    new Plans(blank).keep("Apron", plan("Apron", 20));
    new Plans(blank).keep("Band", plan("Band", 25));
  }

  private static String plan(String name, int ends) {
    return "{\"format\": \"hankbook-plan/1\", \"name\": \"" + name + "\", \"pieces\": [], \"weft\": [], \"warp\": {\"sett\": \"10/cm\", \"ends\": " + ends
        + ", \"length\": \"4 m\", \"order\": [{\"yarn\": \"Harbour 4/2\", \"colour\": \"Slate\", \"ends\": " + ends + "}]}}";
  }

  @BeforeEach
  void lookAhead() {
    press(KeyCode.CONTROL, KeyCode.DIGIT4).release(KeyCode.DIGIT4, KeyCode.CONTROL);
    settle();
  }

  @Test
  void yarnIsOrderedCountedAndArrivesAndAPlanThatIsMovedUpTakesItFromAnother() throws NotDone {
    assertThat(state("Apron")).isEqualTo("SHORT");
    order("120 m", "2026-04-01");
    assertThat(new Expect(studio()).all()).extracting(ExpectedSkein::length).containsExactly(Length.metres(120));
    assertThat(state("Apron")).as("what has not come does not count of itself").isEqualTo("SHORT");
    clickOn("#count-on-order");
    settle();
    assertThat(state("Apron")).isEqualTo("COVERED");
    type("#count-until", "2026-03-31");
    settle();
    assertThat(state("Apron")).as("it comes a day too late").isEqualTo("SHORT");

    interact(() -> lookup("#on-order").queryTableView().getSelectionModel().selectFirst());
    clickOn("#arrived");
    settle();
    assertThat(new Shelf(studio()).skein("S059").orElseThrow().free()).isEqualTo(Length.metres(120));
    assertThat(textOf("#status")).isEqualTo("S059 is on the shelf.");
    assertThat(state("Apron")).isEqualTo("COVERED");
    assertThat(state("Band")).isEqualTo("SHORT");

    choose("Band");
    interact(table()::requestFocus);
    press(KeyCode.ALT, KeyCode.UP).release(KeyCode.UP, KeyCode.ALT);
    while (order().indexOf("Band") > order().indexOf("Apron")) {
      clickOn("#turn-up");
      settle();
    }
    assertThat(state("Apron")).isEqualTo("SHORT");
    assertThat(state("Band")).isEqualTo("COVERED");
    assertThat(lookup("Apron, Harbour 4/2 Slate:").query().isVisible()).isTrue();
    assertThat(kept().indexOf("Apron")).as("only tried").isLessThan(kept().indexOf("Band"));
    clickOn("#keep-order");
    settle();
    assertThat(kept().indexOf("Band")).isLessThan(kept().indexOf("Apron"));
    assertThat(lookup("#ahead-trial").query().isVisible()).isFalse();
    assertThat(new QueuePlans(studio()).all(ExpectedBy.NOTHING).totals()).anyMatch(total -> total.yarn().equals(HARBOUR));
  }

  @Test
  void anOrderThatIsLeftIsAsItWasAndOnlyOnePlanIsTriedAtATime() {
    List<String> before = order();
    choose(before.getLast());
    assertThat(lookup("#turn-down").query().isDisabled()).isTrue();
    clickOn("#turn-up");
    settle();
    choose(before.getFirst());
    assertThat(lookup("#turn-down").query().isDisabled()).isTrue();
    assertThat(lookup("First keep or leave the order that is tried.").query().isVisible()).isTrue();
    clickOn("#leave-order");
    settle();
    assertThat(order()).isEqualTo(before);
    assertThat(lookup("#turn-down").query().isDisabled()).isFalse();
  }

  @Test
  void anOrderIsExpectedOnAnotherDayOrGivenUpForAReason() {
    order("120 m", "2026-03-14");
    interact(() -> lookup("#on-order").queryTableView().getSelectionModel().selectFirst());
    type("#order-day", "2026-13-01");
    assertThat(lookup("#expect-then").query().isDisabled()).isTrue();
    assertThat(lookup("Wanted: a day such as 2026-12-20.").query().isVisible()).isTrue();
    type("#order-day", "2026-05-01");
    clickOn("#expect-then");
    settle();
    assertThat(new Expect(studio()).all()).extracting(expected -> expected.due().toString()).containsExactly("2026-05-01");
    interact(() -> lookup("#on-order").queryTableView().getSelectionModel().selectFirst());
    assertThat(lookup("#give-up").query().isDisabled()).isTrue();
    type("#order-reason", "sold out");
    clickOn("#give-up");
    settle();
    assertThat(new Expect(studio()).all()).isEmpty();
  }

  @Test
  void aPlanThatSomeoneElseKeepsIsShownWhenNewsAreLookedFor() throws NotDone, LedgerUnavailable {
    List<String> before = order();
    try (Studio other = Studio.open(studio().address(), "Bea")) {
      new Plans(other).keep("Cape", plan("Cape", 5));
    }
    interact(home()::lookForNews);
    settle();
    assertThat(order()).hasSize(before.size() + 1).contains("Cape");
  }

  @Test
  void theNameOfAPlanOpensIt() {
    clickOn("Quay towels");
    settle();
    assertThat(lookup("#plan-list").queryListView().getSelectionModel().getSelectedItem()).extracting(row -> ((PlanRow) row).name()).isEqualTo("Quay towels");
  }

  private void order(String length, String day) {
    clickOn("#open-order");
    type("#order-yarn", HARBOUR.yarn());
    type("#order-colour", HARBOUR.colour());
    type("#order-length", length);
    clickOn("#order-due").write(day + "\n");
    settle();
    press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
    settle();
  }

  private void type(String field, String text) {
    interact(() -> lookup(field).queryAs(TextField.class).setText(text));
    settle();
  }

  private void choose(String plan) {
    interact(() -> table().getSelectionModel().select(order().indexOf(plan)));
    settle();
  }

  private TableView<AheadRow> table() {
    return lookup("#ahead").queryTableView();
  }

  private List<String> order() {
    return table().getItems().stream().map(AheadRow::name).toList();
  }

  private String state(String plan) {
    return table().getItems().get(order().indexOf(plan)).state();
  }

  private List<String> kept() {
    return new QueuePlans(studio()).all(ExpectedBy.NOTHING).plans().stream().map(QueuedPlan::name).toList();
  }
}
