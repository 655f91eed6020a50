package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.Bout;
import hankbook.plan.OrderEntry;
import hankbook.plan.Plan;
import hankbook.plan.Pass;
import hankbook.plan.Selvedge;
import hankbook.plan.Step;
import hankbook.plan.Succession;
import hankbook.plan.Warp;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class WindingSheetTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");
  private static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");

  /** Worked by hand: 60 ends, 3 together, 20 passes; the skeins hold 20, 16, 15 and 9 ends. The last two share the third thread. */
  @Test
  void skeinsTakeTurnsAtAPositionAndTheSheetSaysAfterWhichPass() {
    WindingSheet sheet = sheet(3, List.of(of(CHALK, 60)), skein("S1", CHALK, 20), skein("S2", CHALK, 16), skein("S3", CHALK, 15), skein("S4", CHALK, 9));
    assertThat(sheet.passes()).isEqualTo(20);
    Feed feed = sheet.feeds().get(0);
    assertThat(feed.threads()).isEqualTo(3);
    assertThat(feed.stints().stream().mapToInt(Stint::ends).sum()).isEqualTo(60);
    assertThat(feed.stints().stream().map(Stint::position).distinct()).containsExactly(1, 2, 3);
    // Five stints are the least: with four, each position would have to be filled to the pass by whole skeins, and 16 + 15, 16 + 9 and 15 + 9 are not 20.
    assertThat(feed.stints()).hasSize(5);
    assertThat(sheet.fewerThanWished(feed)).isFalse();
  }

  /** 7 ends, 3 together: 3 passes, the last of one thread. */
  @Test
  void theLastPassHoldsWhatIsLeft() {
    WindingSheet sheet = sheet(3, List.of(of(CHALK, 7)), skein("S1", CHALK, 3), skein("S2", CHALK, 2), skein("S3", CHALK, 2));
    assertThat(sheet.warp()).hasSize(1);
    assertThat(sheet.warp().get(0).passes()).extracting(Pass::ends).containsExactly(3, 3, 1);
  }

  /** 7 ends of skeins of 3, 3 and 1: three, then two and two is as few passes as three, three and one, which those skeins could not feed. */
  @Test
  void whatIsLeftIsSpreadWhereTheSkeinsWantIt() {
    WindingSheet sheet = sheet(3, List.of(of(CHALK, 7)), skein("S1", CHALK, 3), skein("S2", CHALK, 3), skein("S3", CHALK, 1));
    assertThat(sheet.warp().get(0).passes()).extracting(Pass::ends).containsExactly(3, 2, 2);
  }

  @Test
  void theSheetGivesTheMostThreadsThatTheSkeinsAllow() {
    WindingSheet sheet = sheet(4, List.of(of(CHALK, 40)), skein("S1", CHALK, 20), skein("S2", CHALK, 12), skein("S3", CHALK, 8));
    Feed feed = sheet.feeds().get(0);
    assertThat(feed.threads()).isEqualTo(2);
    assertThat(feed.passes()).isEqualTo(20);
    assertThat(sheet.fewerThanWished(feed)).isTrue();
  }

  /** A run of few ends is no fault of the skeins. */
  @Test
  void aRunOfFewEndsWantsNoMoreThreadsThanItHas() {
    WindingSheet sheet = sheet(4, List.of(of(CHALK, 2)), skein("S1", CHALK, 1), skein("S2", CHALK, 1));
    assertThat(sheet.fewerThanWished(sheet.feeds().get(0))).isFalse();
  }

  @Test
  void runsAreWoundOneAfterAnotherInTheOrderOfTheWarp() {
    WindingSheet sheet = sheet(2, List.of(of(CHALK, 5), of(WOAD, 2), of(CHALK, 5)), skein("C1", CHALK, 6), skein("C2", CHALK, 4), skein("W1", WOAD, 1), skein("W2", WOAD, 1));
    assertThat(sheet.warp()).extracting(Step::ends).containsExactly(5, 2, 5);
    assertThat(sheet.passes()).isEqualTo(3 + 1 + 3);
    assertThat(sheet.feeds()).extracting(feed -> feed.kind().yarn()).containsExactly(CHALK, WOAD);
    assertThat(sheet.feeds().get(1).stints()).extracting(Stint::firstPass).containsExactly(4, 4);
    assertThat(sheet.lengths()).containsEntry(CHALK, Length.metres(50)).containsEntry(WOAD, Length.metres(10));
    assertThat(sheet.length()).isEqualTo(Length.metres(60));
  }

  @Test
  void threadsOfTwoYarnsAreHeldTogetherWhereTheWeaverWishesIt() {
    List<OrderEntry> striped = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      striped.add(of(CHALK, 1));
      striped.add(of(WOAD, 1));
    }
    Skein[] skeins = {skein("C1", CHALK, 6), skein("W1", WOAD, 6)};
    assertThat(sheet(2, striped, skeins).passes()).isEqualTo(12);
    WindingSheet across = sheet(new WindingWish(2, true, Bout.USUAL, 20), Allowances.NONE, striped, skeins);
    assertThat(across.passes()).isEqualTo(6);
    assertThat(across.warp()).hasSize(1);
    assertThat(across.feeds()).noneMatch(across::fewerThanWished);
    WindingSheet fours = sheet(new WindingWish(4, true, Bout.USUAL, 20), Allowances.NONE, striped, skeins);
    assertThat(fours.passes()).as("one skein of each cannot feed two threads of each").isEqualTo(6);
    assertThat(fours.feeds()).allMatch(fours::fewerThanWished);
  }

  /** Worked by hand: 2 + 12 x (6 + 2) + 6 + 2 ends, 2 together. */
  @Test
  void aWrittenOrderIsWoundAsItIsWrittenBetweenItsSelvedges() {
    List<OrderEntry> order = List.of(written(CHALK, "C", false), written(WOAD, "W", false));
    Warp warp = new Warp(
        Sett.perInch(20), OptionalInt.of(106), Optional.of(Length.metres(5)), 1, 4, order, Optional.of(Succession.parse("12 x (6 C, 2 W), 6 C")),
        Optional.of(new Selvedge(WOAD, 2)), Optional.empty());
    List<Skein> skeins = List.of(skein("C1", CHALK, 39), skein("C2", CHALK, 39), skein("W1", WOAD, 20), skein("W2", WOAD, 20));
    WindingSheet sheet = WindingSheet.of(Plainly.check(new Plan("Winding", List.of(), warp, List.of(), Allowances.NONE, 2), skeins), skeins, WindingWish.of(2));
    assertThat(sheet.warp()).hasSize(1 + 25 + 1);
    assertThat(sheet.warp()).extracting(Step::ends).startsWith(2, 6, 2, 6).endsWith(2, 6, 2);
    assertThat(sheet.feeds()).extracting(Feed::ends).containsExactly(4, 78, 24);
    assertThat(sheet.feeds().get(0).kind().perEnd()).as("doubled").isEqualTo(Length.metres(10));
    assertThat(sheet.feeds().get(1).passes()).isEqualTo(13 * 3);
  }

  /** Two stripes, each of one lot: neither may be fed by a skein of the other's. */
  @Test
  void aStripeOfOneLotIsFedByTheSkeinsOfThatStripe() {
    List<OrderEntry> order = List.of(
        new OrderEntry(CHALK, "left", new OrderEntry.Ends(10), 1, true, 0), of(WOAD, 4), new OrderEntry(CHALK, "right", new OrderEntry.Ends(6), 1, true, 0));
    Warp warp = new Warp(Sett.perInch(20), OptionalInt.of(20), Optional.of(Length.metres(5)), 1, 0, order);
    List<Skein> skeins = List.of(skein("C1", CHALK, 10), skein("C2", CHALK, 6), skein("W1", WOAD, 4));
    PlanCheck check = Plainly.check(new Plan("Winding", List.of(), warp, List.of(), Allowances.NONE, 1), skeins);
    WindingSheet sheet = WindingSheet.of(check, skeins, WindingWish.of(1));
    assertThat(sheet.feeds()).extracting(feed -> feed.kind().kind()).containsExactly(0, 0, 1);
    assertThat(sheet.feeds().get(0).stints()).extracting(Stint::skein).containsExactly("C1");
    assertThat(sheet.feeds().get(2).stints()).extracting(Stint::skein).containsExactly("C2");
  }

  /** The doubled selvedge and the single ends may share a skein where they are in different passes. */
  @Test
  void aSkeinMayFeedTwoKindsOfEndsInDifferentPasses() {
    List<OrderEntry> order = List.of(new OrderEntry(CHALK, new OrderEntry.Ends(2), 2), of(CHALK, 6), of(WOAD, 6));
    Skein[] skeins = {skein("C1", CHALK, 5), skein("C2", CHALK, 5), skein("W1", WOAD, 3), skein("W2", WOAD, 3)};
    WindingSheet sheet = sheet(new WindingWish(2, true, Bout.USUAL, 20), Allowances.NONE, order, skeins);
    assertThat(sheet.passes()).isEqualTo(7);
    assertThat(sheet.feeds().get(0).stints()).extracting(Stint::skein).containsExactlyInAnyOrder("C1", "C2");
    assertThat(sheet.feeds().get(1).stints()).extracting(Stint::skein).containsExactlyInAnyOrder("C1", "C2");
  }

  private static OrderEntry written(YarnColour yarn, String mark, boolean oneLot) {
    return new OrderEntry(yarn, mark, new OrderEntry.Written(), 1, oneLot, 0);
  }

  @Test
  void repairEndsAreWoundBesideTheWarpAndAreInNoBout() {
    Allowances spare = new Allowances(
        Allowances.NONE.warpTakeUp(), Allowances.NONE.weftTakeUp(), Allowances.NONE.drawIn(), Allowances.NONE.lengthShrinkage(), Allowances.NONE.widthShrinkage(),
        Length.ZERO, Length.ZERO, Length.ZERO, Allowances.NONE.winding(), 3, Length.ZERO);
    WindingSheet sheet = sheet(WindingWish.of(1), spare, List.of(of(CHALK, 10)), skein("S1", CHALK, 13));
    assertThat(sheet.warp()).extracting(Step::ends).containsExactly(10);
    assertThat(sheet.spare()).extracting(Step::ends).containsExactly(3);
    assertThat(sheet.bouts()).extracting(Bout::ends).containsExactly(10);
    assertThat(sheet.ends()).isEqualTo(13);
  }

  @Test
  void endsWithoutASkeinAreSaid() {
    WindingSheet sheet = sheet(2, List.of(of(CHALK, 10)), skein("S1", CHALK, 4));
    assertThat(sheet.feeds().get(0).unfed()).isEqualTo(6);
    assertThat(sheet.feeds().get(0).stints()).isEmpty();
  }

  @Test
  void theCountingThreadMakesWholeGroupsAndARest() {
    WindingSheet sheet = sheet(1, List.of(of(CHALK, 50)), skein("S1", CHALK, 50));
    assertThat(sheet.counted(sheet.bouts().get(0))).isEqualTo(new WindingSheet.Counted(2, 10));
  }

  private static WindingSheet sheet(int threads, List<OrderEntry> order, Skein... skeins) {
    return sheet(WindingWish.of(threads), Allowances.NONE, order, skeins);
  }

  private static WindingSheet sheet(WindingWish wish, Allowances allowances, List<OrderEntry> order, Skein... skeins) {
    int ends = order.stream().mapToInt(entry -> ((OrderEntry.Ends) entry.amount()).ends()).sum();
    Warp warp = new Warp(Sett.perInch(20), OptionalInt.of(ends), Optional.of(Length.metres(5)), 1, 0, order);
    PlanCheck check = Plainly.check(new Plan("Winding", List.of(), warp, List.of(), allowances, wish.threads()), List.of(skeins));
    return WindingSheet.of(check, List.of(skeins), wish);
  }

  private static OrderEntry of(YarnColour yarn, int ends) {
    return new OrderEntry(yarn, new OrderEntry.Ends(ends), 1);
  }

  /** A skein that holds so many ends of 5 m and not a metre more. */
  private static Skein skein(String code, YarnColour yarn, int ends) {
    return new Skein(
        code, yarn, "", "cotton", Optional.empty(), PackageForm.CONE, Optional.of(Length.metres(5L * ends)), Optional.empty(), false, "L1", "", Optional.empty(), Optional.empty(),
        Optional.empty());
  }
}
