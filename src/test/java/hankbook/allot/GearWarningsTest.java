package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.gear.Gear;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.gear.Sley;
import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.Dressing;
import hankbook.plan.OrderEntry;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** A plan of 600 ends at 10 to the centimetre, 60 cm in the reed, without an allowance for loom waste. */
class GearWarningsTest {
  private static final Loom TABLE = new Loom("Table loom", Length.parse("50 cm"), Length.ZERO, 4);
  private static final Loom WINDOW = new Loom("Window loom", Length.parse("120 cm"), Length.parse("70 cm"), 8);
  private static final Reed TWELVE = reed("12/in", "90 cm");
  private static final Reed SHORT_FIFTY = reed("50/10 cm", "40 cm");
  private static final Reed FORTY = reed("40/10 cm", "120 cm");

  @Test
  void aPlanThatSaysNothingIsWarnedOfNothingThatTheStudioCanGive() {
    assertThat(texts(said("", "", "", ""), new Gear(List.of(TABLE, WINDOW), List.of(TWELVE, FORTY)))).isEmpty();
    assertThat(texts(said("", "", "8-end satin", "2"), Gear.UNKNOWN)).isEmpty();
  }

  @Test
  void aWarpWiderThanItsLoomIsToldTheWidestThatTakesIt() {
    assertThat(texts(said("Table loom", "", "", ""), looms(TABLE, WINDOW)))
        .containsExactly("TOO_WIDE: The warp is 60 cm wide in the reed, and Table loom weaves 50 cm; Window loom takes it, with 120 cm.");
    assertThat(texts(said("Table loom", "", "", ""), looms(TABLE)))
        .containsExactly("TOO_WIDE: The warp is 60 cm wide in the reed, and Table loom weaves 50 cm; no loom takes it, the widest is Table loom with 50 cm.");
    assertThat(texts(said("", "", "", ""), looms(TABLE)))
        .containsExactly("TOO_WIDE: The warp is 60 cm wide in the reed; no loom takes it, the widest is Table loom with 50 cm.");
  }

  @Test
  void aWeaveOfMoreShaftsThanTheLoomHasIsToldTheLoomThatHasThem() {
    Loom wide = new Loom("Wide loom", Length.metres(1), Length.ZERO, 4);
    assertThat(texts(said("Wide loom", "", "5-end satin", ""), looms(wide, WINDOW)))
        .containsExactly("SHAFTS: 5-end satin takes 5 shafts, and Wide loom has 4; enough has Window loom with 8.");
    assertThat(texts(said("Wide loom", "", "5-end satin", ""), looms(wide)))
        .containsExactly("SHAFTS: 5-end satin takes 5 shafts, and Wide loom has 4; the most has Wide loom with 4.");
    assertThat(texts(said("", "", "12-end satin", ""), looms(wide, WINDOW)))
        .containsExactly("SHAFTS: 12-end satin takes 12 shafts, and no loom has so many; the most has Window loom with 8.");
    assertThat(texts(said("Wide loom", "", "5 ends, 2 intersections", ""), looms(wide))).isEmpty();
  }

  @Test
  void theWasteOfTheLoomIsOfferedWhereThePlanAllowsLess() {
    assertThat(texts(said("Window loom", "", "", ""), looms(WINDOW)))
        .containsExactly("LOOM_WASTE: Window loom wastes 70 cm of warp, and the plan allows nothing for loom waste; allow 70 cm.");
  }

  @Test
  void aLoomOrReedThatTheLedgerDoesNotKnowIsNamedWithThoseItKnows() {
    assertThat(texts(said("Wnidow loom", "Long reed", "", ""), new Gear(List.of(WINDOW), List.of(TWELVE, FORTY))))
        .containsExactly(
            "UNKNOWN_GEAR: No loom Wnidow loom is in the ledger; there are Window loom.", "UNKNOWN_GEAR: No reed Long reed is in the ledger; there are 12/in, 40/10 cm.");
    assertThat(texts(said("Window loom", "Long reed", "", ""), looms()))
        .containsExactly("UNKNOWN_GEAR: No loom Window loom is in the ledger; loom add enters it.", "UNKNOWN_GEAR: No reed Long reed is in the ledger; reed add enters it.");
  }

  @Test
  void namesSayNothingWhereNoLedgerIsAsked() {
    assertThat(texts(said("Window loom", "Long reed", "", ""), Gear.UNKNOWN)).isEmpty();
  }

  @Test
  void aWarpWiderThanItsReedIsToldTheWidest() {
    assertThat(texts(said("", "50/10 cm", "", ""), reeds(SHORT_FIFTY, FORTY)))
        .containsExactly("TOO_WIDE: The warp is 60 cm wide in the reed, and reed 50/10 cm is 40 cm; reed 40/10 cm takes it, with 120 cm.");
    assertThat(texts(said("", "", "", ""), reeds(SHORT_FIFTY)))
        .containsExactly("TOO_WIDE: The warp is 60 cm wide in the reed; no reed takes it, the widest is 50/10 cm with 40 cm.");
  }

  /** 12 dents to the inch sleyed 2-2-2-2-3, 11 ends in 5 dents, are 26.4/in or 10.39/cm: 3.9 % off. */
  @Test
  void aSettThatNoReedGivesIsToldTheNearest() {
    assertThat(texts(said("", "", "", ""), reeds(TWELVE)))
        .containsExactly("SETT: No reed gives 10/cm within 3 %. Nearest: reed 12/in sleyed 2-2-2-2-3 gives 10.39/cm, 57.7 cm wide.");
    assertThat(texts(said("", "12/in", "", ""), reeds(TWELVE, FORTY, SHORT_FIFTY)))
        .containsExactly(
            "SETT: No sleying of reed 12/in gives 10/cm within 3 %. Nearest: reed 40/10 cm sleyed 2-3 gives 10/cm, 60 cm wide; reed 12/in sleyed 2-2-2-2-3 gives 10.39/cm, 57.7 cm wide.");
    assertThat(GearWarnings.of(plan(said("", "", "", "")), yardage(), reeds(TWELVE), BigFraction.of(4, 100))).isEmpty();
  }

  @Test
  void aReedThatThePlanSaysOutrightIsHeldAgainstItsSettWithoutALedgerToo() {
    assertThat(texts(said("", "50/10 cm", "", ""), Gear.UNKNOWN)).isEmpty();
    assertThat(texts(said("", "12/in", "", "2-2-1"), Gear.UNKNOWN))
        .containsExactly(
            "SETT: Reed 12/in sleyed 2-2-1 gives 7.87/cm, 76.2 cm wide, and the plan is set 10/cm. Nearest: reed 12/in sleyed 2-2-2-2-3 gives 10.39/cm, 57.7 cm wide.");
  }

  private static Gear looms(Loom... looms) {
    return new Gear(List.of(looms), List.of());
  }

  private static Gear reeds(Reed... reeds) {
    return new Gear(List.of(), List.of(reeds));
  }

  private static Reed reed(String dents, String width) {
    return new Reed(dents, Sett.parse(dents), Optional.of(Length.parse(width)));
  }

  private static Dressing said(String loom, String reed, String weave, String sley) {
    return new Dressing(something(loom), something(reed), something(weave).map(Weave::parse), something(sley).map(Sley::parse));
  }

  private static Optional<String> something(String text) {
    return Optional.of(text).filter(said -> !said.isEmpty());
  }

  private static List<String> texts(Dressing dressing, Gear gear) {
    List<Warning> warnings = GearWarnings.of(plan(dressing), yardage(), gear, Judgement.DEFAULT.settTolerance());
    assertThat(warnings).allMatch(warning -> warning.yarn().isEmpty());
    return warnings.stream().map(warning -> warning.code() + ": " + warning.text()).toList();
  }

  private static Yardage yardage() {
    return Yardage.of(plan(Dressing.UNSAID));
  }

  private static Plan plan(Dressing dressing) {
    OrderEntry all = new OrderEntry(new YarnColour("Skerry 16/2", "Chalk"), new OrderEntry.Share(BigFraction.ONE), 1);
    Warp warp = new Warp(Sett.perCentimetre(10), OptionalInt.of(600), Optional.of(Length.metres(3)), 1, 0, List.of(all));
    return new Plan("Runner", List.of(), warp, List.of(), Optional.empty(), Allowances.NONE, 1, dressing);
  }
}
