package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import hankbook.reckon.Actuals;
import hankbook.reckon.Bundle;
import hankbook.reckon.Leftover;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ActualsFileTest {
  private static final String SCARF =
      """
      { "format": "hankbook-actuals/1", "plan": "Scarf", "date": "2026-03-14",
        "leftovers": [{"skein": "A", "left": "2 x 60 m"}, {"skein": "B", "gross": "25 g", "tare": "3 g", "regain": "12 %"}, {"skein": "C", "turns": 40, "reel": "1.5 m"},
                      {"skein": "D", "usedUp": true}],
        "thrums": [{"mass": "31 g"}, {"yarn": "", "colour": "", "length": "", "mass": ""}],
        "samples": [{"yarn": "Fjara", "colour": "Ash", "length": "12 m"}],
        "warp": {"length": "4.6 m", "ends": "2 x 100", "broken": 1, "loomWaste": "60 cm", "sampling": "20 cm", "widthInReed": "21 cm"},
        "cloth": {"lengthOnLoom": "3.7 m", "lengthOffLoom": "3.5 m", "lengthFinished": "3.3 m", "widthOnLoom": "19 cm", "widthOffLoom": "18.5 cm", "widthFinished": "17 cm",
                  "picks": 1800, "pieces": 2},
        "hours": {"winding": "1:30", "weaving": "12.5 h", "sleying": "90 min", "threading": "1 h 5 min", "beaming": ""},
        "reason": "", "note": "A calm one." }
      """;

  @Test
  void allThatAFileSaysIsRead() throws BadInput {
    ActualsFile file = ActualsFile.read("a.json", SCARF);
    Actuals actuals = file.actuals();
    assertThat(file.plan()).contains("Scarf");
    assertThat(actuals.date()).contains(LocalDate.of(2026, 3, 14));
    assertThat(actuals.leftovers()).containsExactly(
        new Leftover("A", new Leftover.Left.OfLength(Length.metres(120))),
        new Leftover("B", new Leftover.Left.Weighed(new Weighing(Mass.grams(25), Mass.grams(3), Optional.of(Percentage.parse("12 %"))))),
        new Leftover("C", new Leftover.Left.Counted(new Turns(40, Length.parse("1.5 m")))),
        new Leftover("D", new Leftover.Left.UsedUp()));
    assertThat(actuals.thrums()).containsExactly(new Bundle(Optional.empty(), new Bundle.Amount.OfMass(Mass.grams(31))));
    assertThat(actuals.samples()).containsExactly(new Bundle(Optional.of(new YarnColour("Fjara", "Ash")), new Bundle.Amount.OfLength(Length.metres(12))));
    assertThat(actuals.warp().ends()).hasValue(200);
    assertThat(actuals.warp().broken()).hasValue(1);
    assertThat(actuals.cloth().picks()).hasValue(1800);
    assertThat(actuals.cloth().widthFinished()).contains(Length.parse("17 cm"));
    assertThat(actuals.times()).isEqualTo(Map.of(
        WorkKind.WINDING, Duration.ofMinutes(90), WorkKind.WEAVING, Duration.ofMinutes(750), WorkKind.SLEYING, Duration.ofMinutes(90), WorkKind.THREADING, Duration.ofMinutes(65)));
    assertThat(actuals.note()).isEqualTo("A calm one.");
  }

  @Test
  void whatIsWrittenIsReadBackToTheSame() throws BadInput {
    ActualsFile file = ActualsFile.read("a.json", SCARF);
    assertThat(ActualsFile.read("b.json", file.json())).isEqualTo(file);
    ActualsFile nothing = ActualsFile.read("a.json", "{\"format\": \"hankbook-actuals/1\"}");
    assertThat(nothing.actuals().leftovers()).isEmpty();
    assertThat(ActualsFile.read("b.json", nothing.json())).isEqualTo(nothing);
  }

  @Test
  void whateverWasTypedIsKeptInADraft() throws BadInput {
    ActualsDraft draft = ActualsDraft.of(SCARF).with(ActualsPart.WARP, 1, "length", "4,6 mm?").with(ActualsPart.LEFTOVERS, List.of(DraftRow.BLANK.with("skein", "A")));
    assertThat(ActualsDraft.of(draft.json())).isEqualTo(draft);
    assertThat(draft.text(ActualsPart.WARP, 1, "length")).isEqualTo("4,6 mm?");
    assertThatThrownBy(() -> ActualsFile.read("draft", draft.json())).isInstanceOfSatisfying(BadInput.class, bad -> assertThat(bad.field().orElseThrow().field()).isEqualTo("leftovers[1]"));
    assertThat(ActualsDraft.of("no JSON")).isEqualTo(ActualsDraft.BLANK);
  }

  @Test
  void aFormThatIsFilledInIsReadWithItsBlanksAsNothingSaid() throws BadInput {
    ActualsDraft form = new ActualsDraft(Map.of(ActualsPart.LEFTOVERS, List.of(DraftRow.BLANK.with("skein", "A")), ActualsPart.THRUMS, List.of(DraftRow.BLANK)));
    String filled = form.form().replaceFirst("\"left\" : \"\"", "\"left\" : \"3 m\"");
    Actuals actuals = ActualsFile.read("form", filled).actuals();
    assertThat(actuals.leftovers()).containsExactly(new Leftover("A", new Leftover.Left.OfLength(Length.metres(3))));
    assertThat(actuals.thrums()).isEmpty();
    assertThat(actuals.times()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      hankbook-actuals/1  | hankbook-actuals/2 | a.json, format: found 'hankbook-actuals/2', wanted hankbook-actuals/1
      "thrums"            | "thrumz"           | a.json, thrumz: found 'thrumz', wanted one of cloth, date, format, hours, leftovers, note, plan, reason, samples, thrums, warp
      "2 x 60 m"          | "60"               | a.json, leftovers[1].left: found '60', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)
      "left": "2 x 60 m"  | "left": ""         | a.json, leftovers[1]: found nothing, wanted what is left: left, or gross and tare, or turns and reel, or usedUp yes; one of them
      "usedUp": true      | "usedUp": true, "left": "1 m" | a.json, leftovers[4]: found 'more than one', wanted what is left: left, or gross and tare, or turns and reel, or usedUp yes; one of them
      "tare": "3 g",      | "tare": "",        | a.json, leftovers[2]: found 'gross alone', wanted both gross and tare, the tare 0 g where it is wound on nothing
      "tare": "3 g"       | "tare": "30 g"     | a.json, leftovers[2]: found '30 g', wanted a tare of at most the gross, 25 g
      "reel": "1.5 m"     | "reel": ""         | a.json, leftovers[3]: found 'turns alone', wanted both turns and reel
      "skein": "B"        | "skein": "A"       | a.json, actuals: found 'A', wanted each skein once in the leftovers
      "mass": "31 g"      | "mass": "31 m"     | a.json, thrums[1].mass: found '31 m', wanted a mass such as 100 g (mg, g, kg, oz or lb)
      "mass": "31 g"      | "mass": "31 g", "length": "1 m" | a.json, thrums[1]: found 'both length and mass', wanted either length or mass
      "colour": "Ash",    | "colour": "",      | a.json, samples[1]: found nothing, wanted the colour's name
      "broken": 1         | "broken": 1.5      | a.json, warp.broken: found '1.5', wanted a whole number, or arithmetic that makes one, such as (3 x 36 + 12) x 4
      "ends": "2 x 100"   | "ends": 0          | a.json, warp: found '0', wanted ends of at least 1
      "1:30"              | "1:75"             | a.json, hours.winding: found '1:75', wanted a time such as 1:30, 1.5 h or 90 min
      "beaming"           | "knitting"         | a.json, hours.knitting: found 'knitting', wanted one of beaming, finishing, sleying, threading, weaving, winding
      2026-03-14          | 2026-02-30         | a.json, date: found '2026-02-30', wanted a day such as 2026-03-14
      """, quoteCharacter = '\u0001')
  void aBadFieldIsNamedWithWhatIsWanted(String good, String bad, String message) {
    assertThat(SCARF).contains(good);
    assertThatThrownBy(() -> ActualsFile.read("a.json", SCARF.replace(good, bad))).isInstanceOf(BadInput.class).hasMessage(message);
  }

  @Test
  void whatIsNoJsonIsSaidWithItsLine() {
    assertThatThrownBy(() -> ActualsFile.read("a.json", "{\n\"format\": }")).isInstanceOf(BadInput.class).hasMessageStartingWith("a.json, line 2: found no JSON (");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0:00", "1:30", "100:05", "1.5 min", "1.016667 min"})
  void aTimeIsWrittenAsItIsReadBack(String text) {
    Duration time = WorkTime.parse(text);
    assertThat(WorkTime.parse(WorkTime.print(time))).isEqualTo(time);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "12", "1.5", "h", "1:3", "-1 h", "1,5 h", "1 day"})
  void whatIsNoTimeIsRefused(String text) {
    assertThatThrownBy(() -> WorkTime.parse(text)).isInstanceOf(Unreadable.class);
  }
}
