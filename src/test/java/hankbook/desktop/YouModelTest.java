package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.desktop.units.SettUnit;
import hankbook.desktop.units.Units;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Language and units of whoever sits before the window, what is typed by them, and what a new plan begins with. */
class YouModelTest {
  @AfterEach
  void speakEnglishAgain() {
    Say.in(Language.ENGLISH);
    Wording.in(Units.METRIC);
  }

  @Test
  void whatIsChosenHoldsAtOnceAndAtTheNextStart() {
    Remembered remembered = Remembered.nothing();
    List<String> told = new ArrayList<>();
    YouModel you = new YouModel(remembered, change -> {
      change.run();
      told.add(Wording.yarn(Length.metres(1000)));
    });
    you.speak(Language.GERMAN);
    you.measure(Units.IMPERIAL.withSett(SettUnit.PER_TEN_CENTIMETRES));
    you.measure(you.units());
    assertThat(told).containsExactly("1\u202F000,0 m", "1\u202F093,6 yd");
    speakEnglishAgain();
    YouModel.speakAs(Remembered.of(remembered.json()).orElseThrow());
    assertThat(Say.language()).isEqualTo(Language.GERMAN);
    assertThat(Wording.units()).isEqualTo(Units.IMPERIAL.withSett(SettUnit.PER_TEN_CENTIMETRES));
  }

  @Test
  void nothingIsSaidOtherwiseUntilThatMayBe() {
    Remembered remembered = Remembered.nothing();
    List<Runnable> changes = new ArrayList<>();
    YouModel you = new YouModel(remembered, changes::add);
    you.speak(Language.GERMAN);
    you.measure(Units.IMPERIAL);
    assertThat(Say.language()).isEqualTo(Language.ENGLISH);
    assertThat(Wording.units()).isEqualTo(Units.METRIC);
    assertThat(remembered.json()).doesNotContain("GERMAN");
    changes.forEach(Runnable::run);
    assertThat(Say.language()).isEqualTo(Language.GERMAN);
    assertThat(Wording.units()).isEqualTo(Units.IMPERIAL);
  }

  @Test
  void unitsThatCannotBeReadCountAsNeverChosen() {
    YouModel.speakAs(Remembered.of("{\"units\": {\"yarn\": \"ELLS\"}, \"language\": \"LATIN\"}").orElseThrow());
    assertThat(Wording.units()).isEqualTo(Units.METRIC);
    assertThat(Say.language()).isEqualTo(Language.ENGLISH);
  }

  @Test
  void aFieldShowsTheMarkOfTheLanguageAndWhatIsBelowItHasThePoint() {
    Say.in(Language.SWEDISH);
    StringProperty below = new SimpleStringProperty("1.5 m");
    StringProperty field = new SimpleStringProperty("");
    TypedText.bind(field, below);
    assertThat(field.get()).isEqualTo("1,5 m");
    field.set("1 350,25 m");
    assertThat(below.get()).isEqualTo("1350.25 m");
    assertThat(field.get()).as("what is typed stays").isEqualTo("1 350,25 m");
    field.set("1.234 m");
    assertThat(below.get()).isEqualTo("1,234 m");
    assertThat(Wording.wanted(below.get(), "a length")).endsWith("1,5.").isNotEqualTo(Wording.wanted("12 x", "a length"));
    below.set("70.5 cm");
    assertThat(field.get()).isEqualTo("70,5 cm");
  }

  @Test
  void aNewPlanBeginsWithWhatTheSettingsHave() {
    PlanDraft usual = NewPlan.draft("Sea mats", Judgement.DEFAULT);
    assertThat(text(usual, "warpTakeUp")).isEqualTo("8 % of cloth");
    assertThat(text(usual, "loomWaste")).isEqualTo("70 cm");
    assertThat(text(usual, "gap")).as("nothing is not written").isEmpty();
    assertThat(usual.text(PlanField.of(PlanPart.WINDING, "threads"))).isEqualTo("1");
    Judgement own = Judgement.DEFAULT.with(Setting.WARP_TAKE_UP, "12 % of yarn").with(Setting.GAP, "0.05 m").with(Setting.LOOM_WASTE, "27 in").with(Setting.SAMPLING, "0 cm").with(Setting.THREADS, "4");
    PlanDraft ours = NewPlan.draft("Sea mats", own);
    assertThat(text(ours, "warpTakeUp")).isEqualTo("12 % of yarn");
    assertThat(text(ours, "gap")).isEqualTo("5 cm");
    assertThat(text(ours, "loomWaste")).isEqualTo("27 in");
    assertThat(text(ours, "sampling")).isEmpty();
    assertThat(ours.text(PlanField.of(PlanPart.WINDING, "threads"))).isEqualTo("4");
  }

  private static String text(PlanDraft draft, String allowance) {
    return draft.text(PlanField.of(PlanPart.ALLOWANCES, allowance));
  }
}
