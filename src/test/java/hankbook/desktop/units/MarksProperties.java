package hankbook.desktop.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Arithmetic;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.MoneyText;
import hankbook.measure.NumberingSystem;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Collectors;
import hankbook.yarn.FibreFamily;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is shown can be typed again, in every language and unit, and means the same to what the showing rounds. */
class MarksProperties {
  @Property
  void whatIsShownIsReadAsItStoodInTheFiles(@ForAll("canonical") String text, @ForAll("marks") char mark) {
    Marks marks = new Marks(mark);
    assertThat(marks.canonical(marks.shown(text))).isEqualTo(text);
  }

  @Property
  void marksChangePlacesAndNothingElse(@ForAll @StringLength(max = 30) String text, @ForAll("marks") char mark) {
    Marks marks = new Marks(mark);
    assertThat(marks.shown(marks.shown(text))).isEqualTo(text);
    assertThat(marks.shown(text).replace(',', '.')).isEqualTo(text.replace(',', '.'));
  }

  @Property
  void aLengthOfYarnIsTypedAsItIsShown(@ForAll @LongRange(min = 0, max = 100_000_000_000L) long tenths, @ForAll("quantities") Quantities shown) {
    Length length = new Length(tenths);
    Length typed = Length.parse(canonical(shown, shown.yarn(length)));
    assertThat(Math.abs(typed.minus(length).tenthsOfMillimetre())).isLessThanOrEqualTo(shown.units().yarn().unit().tenthsOfMillimetre() / 20 + 1);
  }

  @Property
  void aLengthOfClothIsTypedAsItIsShown(@ForAll @LongRange(min = 0, max = 100_000_000L) long tenths, @ForAll("quantities") Quantities shown) {
    Length length = new Length(tenths);
    Length typed = Length.parse(canonical(shown, shown.cloth(length)));
    assertThat(Math.abs(typed.minus(length).tenthsOfMillimetre())).isLessThanOrEqualTo(51);
  }

  @Property
  void aMassIsTypedAsItIsShown(@ForAll @LongRange(min = 0, max = 100_000_000L) long milligrams, @ForAll("quantities") Quantities shown) {
    Mass mass = new Mass(milligrams);
    Mass typed = Mass.parse(canonical(shown, shown.mass(mass)));
    assertThat(Math.abs(typed.minus(mass).milligrams())).isLessThanOrEqualTo(2_269);
  }

  @Property
  void aSettIsTypedAsItIsShown(@ForAll @LongRange(min = 1, max = 20_000) long hundredths, @ForAll("setts") SettUnit entered, @ForAll("quantities") Quantities shown) {
    Sett sett = new Sett(BigDecimal.valueOf(hundredths + 100, 2), entered.span());
    Sett typed = Sett.parse(canonical(shown, shown.sett(sett)));
    BigFraction off = typed.perTenth().subtract(sett.perTenth()).abs().multiply(typed.span().tenthsOfMillimetre());
    assertThat(off.doubleValue()).isLessThanOrEqualTo(0.05);
  }

  @Property
  void aGristIsTypedAsItIsShown(@ForAll @LongRange(min = 5_000, max = 1_000_000) long milliTex, @ForAll("fibres") String fibre, @ForAll("quantities") Quantities shown) {
    Grist grist = new Grist(BigFraction.of(milliTex, 1000));
    Grist typed = YarnNumber.parse(canonical(shown, shown.grist(grist, fibre))).grist();
    assertThat(typed.tex().divide(grist.tex()).subtract(BigFraction.ONE).abs().doubleValue()).isLessThan(0.02);
  }

  @Property
  void aPercentageIsTypedAsItIsShown(@ForAll @LongRange(min = 0, max = 99_999) long hundredths, @ForAll("quantities") Quantities shown) {
    BigFraction part = BigFraction.of(hundredths, 1_000_000);
    assertThat(Percentage.parse(canonical(shown, shown.percent(part, 4))).fraction()).isEqualTo(part);
  }

  @Example
  void aCommaIsADecimalMarkWhereTheLanguageHasItSo() {
    Marks comma = new Marks(',');
    assertThat(Length.parse(comma.canonical("1,5 m"))).isEqualTo(Length.parse("1.5 m"));
    assertThat(Length.parse(comma.canonical("2 x 70,5 cm + ,5 cm"))).isEqualTo(Length.parse("141.5 cm"));
    assertThat(Length.parse(comma.canonical("1 350,5 m"))).isEqualTo(Length.parse("1350.5 m"));
    assertThat(MoneyText.parse(comma.canonical("24,50 EUR"))).hasToString("EUR 24.50");
    assertThat(Sett.parse(comma.canonical("9,5/cm"))).isEqualTo(Sett.parse("9.5/cm"));
    assertThat(Arithmetic.count(comma.canonical("(3 x 36 + 12) x 4"))).isEqualTo(480);
  }

  @Property
  void numbersThatABlankPartsStayTwo(@ForAll @LongRange(min = 0, max = 9999) long one, @ForAll @LongRange(min = 0, max = 9999) long other, @ForAll("marks") char mark) {
    String typed = one + " " + other;
    assertThat(new Marks(mark).canonical(typed)).isEqualTo(typed);
  }

  @Property
  void thousandsAreJoinedWhereTheWindowPartedThem(@ForAll @LongRange(min = 1000, max = 999_999) long number, @ForAll("marks") char mark) {
    for (String blank : new String[] {"\u00A0", "\u202F"}) {
      assertThat(new Marks(mark).canonical(number / 1000 + blank + String.format("%03d", number % 1000))).isEqualTo(Long.toString(number));
    }
  }

  @Example
  void aTypedBlankPartsThousandsOnlyWhereTheNumberIsSeenToEnd() {
    Marks point = new Marks('.');
    assertThat(point.canonical("1 350 m")).isEqualTo("1350 m");
    assertThat(point.canonical("12 350m")).isEqualTo("12350m");
    assertThat(point.canonical("1 234 567.5 m")).isEqualTo("1234567.5 m");
    assertThat(point.canonical("1 200/10 cm")).isEqualTo("1200/10 cm");
    for (String typed : new String[] {"100 101", "1 350", "100 101, 99", "102 99 101 g", "100 101 x 3", "1350 101 g", "100  101 g"}) {
      assertThat(point.canonical(typed)).isEqualTo(typed);
    }
  }

  @Example
  void aCommaAfterAUnitPartsAndIsNoDecimalMark() {
    Marks comma = new Marks(',');
    assertThat(comma.canonical("102,5 g,99 g")).isEqualTo("102.5 g,99 g");
    assertThat(comma.canonical("120m,118m, ,5 m")).isEqualTo("120m,118m, .5 m");
    assertThat(Marks.isOther("102 g,99 g")).isFalse();
  }

  @Property
  void theOtherMarkIsNeverReadAsANumber(@ForAll @LongRange(min = 0, max = 999) long whole, @ForAll @LongRange(min = 0, max = 999_999) long part, @ForAll("marks") char mark) {
    String typed = whole + (mark == '.' ? "," : ".") + part + " m";
    String canonical = new Marks(mark).canonical(typed);
    assertThat(Marks.isOther(canonical)).isTrue();
    assertThatThrownBy(() -> Length.parse(canonical)).isInstanceOf(Unreadable.class);
  }

  @Example
  void bothMarksInOneNumberAreNoNumber() {
    assertThatThrownBy(() -> Length.parse(new Marks(',').canonical("1.234,5 m"))).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> Length.parse(new Marks('.').canonical("1,234.5 m"))).isInstanceOf(Unreadable.class);
  }

  private static String canonical(Quantities quantities, String shown) {
    return new Marks(quantities.mark()).canonical(shown);
  }

  @Provide
  Arbitrary<Character> marks() {
    return Arbitraries.of('.', ',');
  }

  @Provide
  Arbitrary<SettUnit> setts() {
    return Arbitraries.of(SettUnit.class);
  }

  @Provide
  Arbitrary<String> fibres() {
    return Arbitraries.of("wool", "silk", "cotton", "linen", "viscose", "nylon", "wool 70 linen 30", "");
  }

  @Provide
  Arbitrary<String> canonical() {
    Arbitrary<String> number = Combinators.combine(Arbitraries.longs().between(0, 999_999_999), Arbitraries.integers().between(0, 4)).as((digits, places) -> BigDecimal.valueOf(digits, places).toPlainString());
    return Combinators.combine(number, Arbitraries.of(" m", " cm", " g", " %", "/10 cm", " EUR", " % of cloth", " tex", " x 70.5 cm", "")).as((digits, unit) -> digits + unit);
  }

  @Provide
  Arbitrary<Quantities> quantities() {
    Arbitrary<YarnNumbers> numbers = Arbitraries.of(NumberingSystem.class).list().ofSize(FibreFamily.values().length).map(
        systems -> {
          Iterator<NumberingSystem> next = systems.iterator();
          return new YarnNumbers(Arrays.stream(FibreFamily.values()).collect(Collectors.toMap(family -> family, _ -> next.next())), systems.getFirst());
        });
    return Combinators.combine(
            Arbitraries.of(YarnUnit.class), Arbitraries.of(ClothUnit.class), Arbitraries.of(WeightUnit.class), Arbitraries.of(SettUnit.class), numbers, marks())
        .as((yarn, cloth, weight, sett, number, mark) -> new Quantities(new Units(yarn, cloth, weight, sett, number), mark));
  }
}
