package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Setting;
import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Settings;
import hankbook.studio.Studio;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SettingsScreenTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @BeforeEach
  void goToTheSettings() {
    press(KeyCode.CONTROL, KeyCode.DIGIT8).release(KeyCode.DIGIT8, KeyCode.CONTROL);
    settle();
  }

  @Test
  void anotherRiskLimitMakesATightPlanCoveredAndTheDefaultMakesItTightAgain() {
    assertThat(lookup("#your-language").query().isFocused()).as("the keyboard is where the first choice is").isTrue();
    assertThat(standing("Ash blanket")).isEqualTo(Standing.TIGHT);
    type("50 %\n");
    assertThat(textOf("#status")).isEqualTo("Risk over which a yarn is TIGHT: 50 %. Plans are reckoned anew.");
    assertThat(standing("Ash blanket")).isEqualTo(Standing.COVERED);
    clickOn("#back-risk-limit");
    settle();
    assertThat(text()).isEqualTo("5 %");
    assertThat(new Settings(studio()).judgement().text(Setting.RISK_LIMIT)).isEqualTo("5 %");
    assertThat(standing("Ash blanket")).isEqualTo(Standing.TIGHT);
    assertThat(lookup("#back-risk-limit").query().isVisible()).isFalse();
  }

  @Test
  void aNumberOutsideItsRangeStaysVisibleWithItsMessageAndNothingIsSet() {
    type("60 %\t");
    assertThat(text()).isEqualTo("60 %");
    assertThat(lookup("Wanted: from 0.01 % to 50 %.").query().isVisible()).isTrue();
    interact(home()::lookForNews);
    settle();
    assertThat(text()).isEqualTo("60 %");
    assertThat(new Settings(studio()).judgement().set()).isEmpty();
  }

  @Test
  void anAmountIsSetAndAnEmptiedFieldLetsTheDefaultHoldAgain() {
    interact(() -> lookup("#set-hourly-rate").query().requestFocus());
    write("18 EUR\n");
    settle();
    assertThat(textOf("#status")).isEqualTo("Cost of an hour: 18.00 EUR. Plans are reckoned anew.");
    assertThat(new Settings(studio()).judgement().text(Setting.HOURLY_RATE)).isEqualTo("18.00 EUR");
    press(KeyCode.CONTROL, KeyCode.A).release(KeyCode.A, KeyCode.CONTROL).push(KeyCode.DELETE).push(KeyCode.ENTER);
    settle();
    assertThat(new Settings(studio()).judgement().money(Setting.HOURLY_RATE)).isEmpty();
    assertThat(lookup("#set-hourly-rate").queryAs(TextField.class).getText()).isEmpty();
  }

  @Test
  void whatIsSetByKindOfWorkIsFoldedAwayAndSetThere() {
    TitledPane fold = lookup("#settings-by-work").queryAs(TitledPane.class);
    assertThat(fold.isExpanded()).isFalse();
    interact(() -> fold.setExpanded(true));
    settle();
    assertThat(lookup("#set-weaving-time").queryAs(TextField.class).getText()).as("not set").isEmpty();
    interact(() -> lookup("#set-weaving-time").queryAs(TextField.class).setText("4 s"));
    interact(() -> lookup("#set-weaving-rate").queryAs(TextField.class).setText("20 EUR"));
    interact(() -> lookup("#set-weaving-time").query().requestFocus());
    interact(() -> lookup("#set-weaving-rate").query().requestFocus());
    interact(() -> lookup("#set-winding-rate").query().requestFocus());
    settle();
    assertThat(new Settings(studio()).judgement().set()).as("the default, but set").containsEntry(Setting.WEAVING_TIME, "4 s");
    assertThat(lookup("#set-weaving-time").queryAs(TextField.class).getText()).isEqualTo("4 s");
    assertThat(new Settings(studio()).judgement().text(Setting.WEAVING_RATE)).isEqualTo("20.00 EUR");
  }

  private void type(String typed) {
    clickOn("#set-risk-limit").press(KeyCode.CONTROL, KeyCode.A).release(KeyCode.A, KeyCode.CONTROL).write(typed);
    settle();
  }

  private String text() {
    return lookup("#set-risk-limit").queryAs(TextField.class).getText();
  }

  /** As the list of plans has it, which need not be on the screen. */
  private Standing standing(String plan) {
    clickOn("#go-plans");
    settle();
    ListView<PlanRow> plans = lookup("#plan-list").queryListView();
    Standing standing = plans.getItems().stream().filter(row -> row.name().equals(plan)).findFirst().orElseThrow().standingProperty().get();
    clickOn("#go-settings");
    settle();
    return standing;
  }
}
