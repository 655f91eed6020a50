package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The page of what a plan costs, used as a weaver uses it. */
class CostPageTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  private void open(String plan) {
    press(KeyCode.CONTROL, KeyCode.DIGIT2).release(KeyCode.DIGIT2, KeyCode.CONTROL);
    settle();
    clickOn(plan);
    settle();
    interact(() -> lookup("#plan-page-cost").queryAs(ToggleButton.class).fire());
    settle();
  }

  private void type(String id, String text) {
    interact(() -> lookup((TextField field) -> id.equals(field.getId())).query().requestFocus());
    write(text);
    settle();
  }

  private List<String> table() {
    return lookup("#cost-table").lookup((Node node) -> node instanceof Label || node instanceof ToggleButton).queryAllAs(Labeled.class).stream().map(Labeled::getText).filter(text -> !text.isEmpty()).toList();
  }

  @Test
  void aWeaverSeesTheTotalTypesAMarginAndSeesThePrice() {
    open("Quay towels");
    assertThat(textOf("#cost-total")).isEqualTo("49.54 EUR");
    assertThat(textOf("#cost-each")).isEqualTo("Each towel 12.38 EUR, 2 of them 12.39 EUR. Without 2 things whose cost is not known, named below.");
    assertThat(table()).contains("Yarn", "Warp", "Loom waste", "Skerry 16/2 Chalk", "Total").doesNotContain("what if", "Work");
    assertThat(lookup("#cost-not-counted").lookup(".label").queryAllAs(Label.class)).extracting(Label::getText)
        .anyMatch(text -> text.contains("S005") && text.contains("what was paid for it is not known"));
    assertThat(lookup("#cost-hours").lookup(".label").queryAllAs(Label.class)).extracting(Label::getText)
        .contains("Weaving, 3\u202F303 picks × 4 s", "3 h 40 min");
    type("cost-part", "40 %");
    assertThat(textOf("#cost-price")).isEqualTo("82.57 EUR");
    assertThat(textOf("#cost-price-each")).isEqualTo("Each towel 20.64 EUR, 1 of them 20.65 EUR");
    assertThat(lookup("#cost-part").query().isFocused()).as("typing is not disturbed by what it changes").isTrue();
    assertThat(table()).contains("Price", "82.57");
    interact(() -> lookup("#cost-markup").queryAs(ToggleButton.class).fire());
    settle();
    assertThat(textOf("#cost-price")).isEqualTo("69.36 EUR");
    assertThat(textOf("#cost-tax")).contains("tax");
  }

  @Test
  void whatIfStandsBesideWhatIsAndIsPutAwayByClear() {
    open("Quay towels");
    assertThat(lookup("#cost-try-rate").query().getParent().getParent().getParent().isVisible()).isFalse();
    interact(() -> lookup("#cost-what-if").queryAs(ToggleButton.class).fire());
    settle();
    type("cost-try-rate", "18");
    assertThat(lookup("#cost-try-rate").query().isFocused()).isTrue();
    assertThat(table()).contains("as it is", "what if", "difference", "49.54", "356.00", "+306.46");
    type("cost-try-Skerry 16/2 Woad", "21.40");
    assertThat(table()).contains("Skerry 16/2 Woad");
    interact(() -> lookup("#cost-clear").queryButton().fire());
    settle();
    assertThat(table()).contains("49.54").doesNotContain("what if");
    assertThat(lookup("#cost-tried").query().isVisible()).isFalse();
    assertThat(textOf("#cost-total")).isEqualTo("49.54 EUR");
  }

  @Test
  void aShortPlanSaysWhatMustBeSpentNowAndWhatIsLeftOver() {
    open("Gorse shawl");
    assertThat(table()).contains("Still to buy", "Gorse Gold");
    assertThat(lookup("#cost-spend-now").lookup(".label").queryAllAs(Label.class)).extracting(Label::getText)
        .contains("100.00 EUR", "4 of 500.0 m, Gorse Gold at 19.00 EUR");
    assertThat(lookup("#cost-remnants").lookup(".label").queryAllAs(Label.class)).extracting(Label::getText)
        .anyMatch(text -> text.startsWith("of what is bought, 233.1 m Gorse Gold"));
  }
}
