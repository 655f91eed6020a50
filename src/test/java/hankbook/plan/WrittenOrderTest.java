package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Warps of 1 m at 10 to the centimetre, counted by hand. */
class WrittenOrderTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");
  private static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");
  private static final YarnColour GOLD = new YarnColour("Gorse", "Gold");

  @Test
  void aWrittenOrderCountsTheEndsOfEachYarn() {
    Yardage yardage = Yardage.of(plan(warp("12 x (6 Chalk, 2 Woad), 6 Chalk", 102, entry(CHALK), entry(WOAD))));
    assertThat(yardage.needs()).extracting(Need::threads).containsExactly(78L, 24L);
  }

  /** 66 repeats make 66 × 8 + 6 = 534 ends, 65 make 526. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      65 x (6 Chalk, 2 Woad), 6 Chalk | 528 | found '526 ends in the order', wanted 528 ends, as the warp has: 2 too few; 65 repeats make 526, 66 repeats make 534
      67 x (6 Chalk, 2 Woad), 6 Chalk | 534 | found '542 ends in the order', wanted 534 ends, as the warp has: 8 too many; 66 repeats make 534
      6 Chalk, 2 Woad                 | 9   | found '8 ends in the order', wanted 9 ends, as the warp has: 1 too few
      3 x (6 Chalk, 2 Woad), 6 Chalk  | 9   | found '30 ends in the order', wanted 9 ends, as the warp has: 21 too many; 1 repeat makes 14
      """)
  void anOrderOfOtherEndsThanTheWarpHasNamesTheDifferenceAndTheNearestRepeats(String order, int ends, String message) {
    Plan plan = plan(warp(order, ends, entry(CHALK), entry(WOAD)));
    assertThatThrownBy(() -> Yardage.of(plan)).isInstanceOf(Unreadable.class).hasMessage(message);
  }

  @Test
  void endsGivenBesideAWrittenOrderMustBeThoseItMakes() {
    OrderEntry right = new OrderEntry(CHALK, "Chalk", new OrderEntry.Ends(78), 1, false, 0);
    assertThat(warp("12 x (6 Chalk, 2 Woad), 6 Chalk", 102, right, entry(WOAD)).order()).hasSize(2);
    OrderEntry wrong = new OrderEntry(CHALK, "Chalk", new OrderEntry.Ends(80), 1, false, 0);
    assertThatThrownBy(() -> warp("12 x (6 Chalk, 2 Woad), 6 Chalk", 102, wrong, entry(WOAD)))
        .hasMessage("found '80 ends of Chalk', wanted 78, as the written order makes: 2 too many");
  }

  @Test
  void everyMarkIsThatOfOneYarnAndEveryYarnIsInTheOrder() {
    assertThatThrownBy(() -> warp("6 Chalk, 2 Wode", 8, entry(CHALK), entry(WOAD))).hasMessage("found 'Wode', wanted one of the order's marks: Chalk, Woad");
    assertThatThrownBy(() -> warp("6 Chalk", 6, entry(CHALK), entry(CHALK))).hasMessage("found 'Chalk', wanted a mark that only one yarn has, not 2");
    assertThatThrownBy(() -> warp("6 Chalk", 6, entry(CHALK), entry(WOAD)))
        .hasMessage("found 'no Woad in the written order', wanted every yarn it is made of in it");
    assertThatThrownBy(() -> new Warp(Sett.perCentimetre(10), OptionalInt.of(6), Optional.empty(), 1, 0, List.of(entry(CHALK))))
        .hasMessage("found nothing, wanted either ends or share");
  }

  /** Doubled ends of Gold: 10 ends of 2 m; single ends of the same yarn stay a need of their own. */
  @Test
  void doubledEndsHaveAMarkOfTheirOwn() {
    OrderEntry doubled = new OrderEntry(GOLD, "Gold doubled", new OrderEntry.Written(), 2, false, 0);
    Yardage yardage = Yardage.of(plan(warp("10 x (3 Gold, 1 Gold doubled)", 40, entry(GOLD), doubled)));
    assertThat(yardage.needs()).extracting(Need::length).containsExactly(Length.metres(30), Length.metres(20));
  }

  /** 8 selvedge ends doubled of Woad, 4 at each edge, beside 102 ends of the order: 110 in all, 10.2 cm wide. */
  @Test
  void selvedgesOfTheirOwnYarnAreLeftOutOfTheOrder() {
    Warp warp =
        new Warp(
            Sett.perCentimetre(10), OptionalInt.of(110), Optional.of(Length.metres(1)), 1, 8, List.of(entry(CHALK), entry(GOLD)),
            Optional.of(Succession.parse("12 x (6 Chalk, 2 Gold), 6 Chalk")), Optional.of(new Selvedge(WOAD, 2)), Optional.empty());
    Yardage yardage = Yardage.of(plan(warp));
    assertThat(yardage.needs()).extracting(Need::yarn).containsExactly(CHALK, GOLD, WOAD);
    assertThat(yardage.needs()).extracting(Need::threads).containsExactly(78L, 24L, 8L);
    assertThat(yardage.needs().get(2).length()).isEqualTo(Length.metres(16));
    assertThat(yardage.width().inReed()).isEqualTo(Length.parse("10.2 cm"));
    assertThat(ClothPattern.of(plan(warp)).warp().stripes(2))
        .containsExactly(new Band.Stripe(new ClothThread(WOAD, 2), 4), new Band.Stripe(new ClothThread(CHALK, 1), 6));
    assertThatThrownBy(
            () -> new Warp(warp.sett(), warp.ends(), warp.length(), 1, 0, warp.order(), warp.succession(), warp.selvedge(), Optional.empty()))
        .hasMessage("found 'a selvedge of Skerry 16/2 Woad and no ends of it', wanted selvedge ends of at least 1 beside it");
  }

  @Test
  void stripesThatMustComeFromOneLotStayNeedsOfTheirOwn() {
    OrderEntry left = new OrderEntry(WOAD, "left", new OrderEntry.Ends(10), 1, true, 0);
    OrderEntry right = new OrderEntry(WOAD, "right", new OrderEntry.Ends(10), 1, true, 0);
    OrderEntry middle = new OrderEntry(WOAD, "middle", new OrderEntry.Ends(5), 1, false, 0);
    List<Need> needs = Yardage.of(plan(warp("10 left, 5 middle, 10 right", 25, left, middle, right))).needs();
    assertThat(needs).extracting(Need::threads).containsExactly(10L, 5L, 10L);
    assertThat(needs).extracting(Need::oneLot).containsExactly(true, false, true);
  }

  @Test
  void repairEndsAreOfTheYarnsThatNameThemAndTheRestOfTheYarnWithMostEnds() {
    OrderEntry mended = new OrderEntry(WOAD, "Woad", new OrderEntry.Written(), 1, false, 3);
    Warp warp = warp("6 Chalk, 2 Woad", 8, entry(CHALK), mended);
    assertThat(Yardage.of(plan(warp)).needs()).extracting(Need::threads).containsExactly(6L, 5L);
    assertThat(Yardage.of(plan(warp, repairs(4), Optional.empty())).needs()).extracting(Need::threads).containsExactly(7L, 5L);
    assertThatThrownBy(() -> Yardage.of(plan(warp, repairs(2), Optional.empty())))
        .hasMessage("found '3 repair ends in the order', wanted at most the 2 of the allowances");
  }

  /** 1 m at 9 to the centimetre is 900 picks: 37 repeats of 24 and the first 12 of the next, which are 10 Chalk and 2 Woad. */
  @Test
  void picksFollowTheWrittenOrderAlongTheCloth() {
    Plan plan = plan(warp("6 Chalk", 6, entry(CHALK)), Allowances.NONE, Optional.of("10 Chalk, 4 Woad, 10 Gold"), weft(CHALK, 9, "1"), weft(WOAD, 9, "1"), weft(GOLD, 9, "1"));
    assertThat(Yardage.of(plan).needs()).filteredOn(need -> need.role() == Need.Role.WEFT).extracting(Need::threads).containsExactly(380L, 150L, 370L);
  }

  @Test
  void anInlayAndAWeftOfOtherPicksRemainTheirOwn() {
    Plan plan =
        plan(warp("6 Chalk", 6, entry(CHALK)), Allowances.NONE, Optional.of("8 Chalk, 1 Woad"), weft(CHALK, 9, "1"), weft(WOAD, 9, "1"), weft(GOLD, 9, "0.25"));
    assertThat(Yardage.of(plan).needs()).filteredOn(need -> need.role() == Need.Role.WEFT).extracting(Need::threads).containsExactly(800L, 100L, 900L);
  }

  @Test
  void anOrderOfPicksIsOfOnePassageAndOfAllItsYarns() {
    Warp warp = warp("6 Chalk", 6, entry(CHALK));
    assertThatThrownBy(() -> plan(warp, Allowances.NONE, Optional.of("8 Chalk, 1 Woad"), weft(CHALK, 9, "1"), weft(WOAD, 8, "1")))
        .hasMessage("found 'Chalk and Woad', wanted wefts of the same picks, width and length in the written order");
    assertThatThrownBy(() -> plan(warp, Allowances.NONE, Optional.of("8 Chalk"), weft(CHALK, 9, "1"), weft(WOAD, 9, "1")))
        .hasMessage("found 'no Woad in the written order', wanted every yarn it is made of in it");
    assertThatThrownBy(() -> plan(warp, Allowances.NONE, Optional.of("8 Chalk, 1 Gold"), weft(CHALK, 9, "1")))
        .hasMessage("found 'Gold', wanted one of the order's marks: Chalk");
  }

  /** Half as many ends of an order of 78 and 24: shares of 51 are 39 and 12. */
  @Test
  void anotherNumberOfEndsKeepsTheProportionOfAWrittenOrder() {
    Plan plan = plan(warp("12 x (6 Chalk, 2 Woad), 6 Chalk", 102, entry(CHALK), entry(WOAD)));
    assertThat(Yardage.of(PlanVariants.withWarp(plan, 51, Length.metres(1))).needs()).extracting(Need::threads).containsExactly(39L, 12L);
    assertThat(PlanVariants.withWarp(plan, 102, Length.metres(2)).warp().succession()).isPresent();
  }

  private static OrderEntry entry(YarnColour yarn) {
    return new OrderEntry(yarn, new OrderEntry.Written(), 1);
  }

  private static Weft weft(YarnColour yarn, int picks, String width) {
    BigFraction part = hankbook.measure.Exact.of(new java.math.BigDecimal(width));
    return new Weft(yarn, Sett.perCentimetre(picks), BigFraction.ONE, 1, part, Optional.of(Length.metres(1)));
  }

  private static Warp warp(String order, int ends, OrderEntry... entries) {
    return new Warp(
        Sett.perCentimetre(10), OptionalInt.of(ends), Optional.of(Length.metres(1)), 1, 0, List.of(entries), Optional.of(Succession.parse(order)),
        Optional.empty(), Optional.empty());
  }

  private static Plan plan(Warp warp) {
    return plan(warp, Allowances.NONE, Optional.empty());
  }

  private static Plan plan(Warp warp, Allowances allowances, Optional<String> picks, Weft... wefts) {
    return new Plan("Stripes", List.of(), warp, List.of(wefts), picks.map(Succession::parse), allowances, 1);
  }

  private static Allowances repairs(int ends) {
    Allowances none = Allowances.NONE;
    return new Allowances(
        none.warpTakeUp(), none.weftTakeUp(), none.drawIn(), none.lengthShrinkage(), none.widthShrinkage(), none.sampling(), none.loomWaste(),
        none.gap(), none.winding(), ends, none.roundUpTo());
  }
}
