package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.measure.YarnNumber;
import hankbook.plan.Allowances;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.WarpBecause;
import hankbook.plan.Weft;
import hankbook.plan.WidthBecause;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import hankbook.yarn.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.numbers.fraction.BigFraction;

/** Trees of every figure of random plans; that the parts of each make it is held as they are built. */
class BecauseProperties {
  private static final List<YarnColour> YARNS =
      List.of(new YarnColour("Skerry 16/2", "Chalk"), new YarnColour("Skerry 16/2", "Woad"), new YarnColour("Fulmar 8/1", "Peat"), new YarnColour("Fulmar 8/1", "Moss"));

  @Property(tries = 200, seed = "20261140")
  void widthEndsAndWarpAreThoseOfThePlan(@ForAll long seed) {
    PlanCheck check = check(new Random(seed));
    WidthBecause width = WidthBecause.of(check.plan());
    assertThat(width.inReed().amount().exact()).isEqualTo(check.yardage().width().inReedTenths());
    assertThat(width.ends().amount()).isEqualTo(Amount.Count.of(check.yardage().width().ends()));
    WarpBecause warp = WarpBecause.of(check.plan());
    assertThat(warp.total().amount()).isEqualTo(Amount.Stretch.of(check.yardage().warp().total()));
    assertThat(warp.woven().amount().exact()).isEqualTo(check.yardage().warp().woven());
    check.yardage().warp().parts().forEach((part, length) -> assertThat(warp.parts()).as("%s", part).hasEntrySatisfying(part, because -> assertThat(because.amount()).isEqualTo(Amount.Stretch.of(length))));
  }

  @Property(tries = 200, seed = "20261141")
  void needFreeMarginUncertaintyAndRiskAreThoseOfTheCheck(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = plan(random);
    List<Skein> stock = stock(random);
    PlanCheck check = PlanCheck.of(plan, stock, Judgement.DEFAULT);
    for (Cover cover : check.covers()) {
      CoverBecause why = CoverBecause.of(cover, plan, stock);
      assertThat(why.need().amount()).isEqualTo(Amount.Stretch.of(cover.need()));
      assertThat(why.free().amount()).isEqualTo(Amount.Stretch.of(cover.free()));
      assertThat(why.margin().amount()).isEqualTo(Amount.Stretch.of(cover.margin()));
      assertThat(why.uncertainty().amount()).isEqualTo(Amount.Stretch.of(cover.uncertainty()));
      assertThat(why.risk().amount()).isEqualTo(Amount.Likelihood.of(cover.risk()));
    }
  }

  @Property(tries = 100, seed = "20261142")
  void whatASkeinGivesIsItsShareAndNoMoreThanItHolds(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = plan(random);
    List<Skein> stock = stock(random);
    for (Share share : PlanCheck.of(plan, stock, Judgement.DEFAULT).shares()) {
      Skein skein = stock.stream().filter(one -> one.code().equals(share.code())).findFirst().orElseThrow();
      Because given = SkeinBecause.given(share);
      assertThat(given.amount()).isEqualTo(Amount.Stretch.of(share.warp().plus(share.weft())));
      assertThat(SkeinBecause.left(share, skein).amount()).isEqualTo(Amount.Stretch.of(skein.holds().minus(share.warp()).minus(share.weft())));
      share.kinds().forEach(kind -> assertThat(SkeinBecause.ends(skein, kind).parts().getFirst().amount().exact().subtract(kind.ends()).signum()).isNotNegative());
    }
  }

  private static PlanCheck check(Random random) {
    return PlanCheck.of(plan(random), List.of(), Judgement.DEFAULT);
  }

  private static List<Skein> stock(Random random) {
    List<Skein> stock = new ArrayList<>();
    for (int i = 0; i < random.nextInt(9); i++) {
      YarnColour yarn = YARNS.get(random.nextInt(YARNS.size()));
      boolean weighed = random.nextBoolean();
      Skein skein =
          new Skein(
              "S" + i, yarn, "", "", Optional.of(YarnNumber.parse("50 tex")), PackageForm.SKEIN, weighed ? Optional.empty() : Optional.of(Length.metres(1 + random.nextInt(900))),
              weighed ? Optional.of(new Weighing(Mass.grams(20 + random.nextInt(90)), Mass.grams(random.nextInt(20)))) : Optional.empty(), false, "L" + random.nextInt(2), "", Optional.empty(),
              Optional.empty(), Optional.empty());
      stock.add(random.nextInt(3) > 0 ? skein : skein.withLeft(new Length(random.nextInt(4_000_000)), true));
    }
    return stock;
  }

  private static Plan plan(Random random) {
    boolean pieces = random.nextInt(4) > 0;
    OptionalInt ends = pieces && random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(60 + random.nextInt(300));
    Optional<Length> length = pieces && random.nextInt(3) > 0 ? Optional.empty() : Optional.of(new Length(3_000 + random.nextInt(60_000)));
    int selvedge = random.nextInt(3) * 4;
    Warp warp = new Warp(random.nextBoolean() ? Sett.perCentimetre(4 + random.nextInt(12)) : Sett.perInch(9 + random.nextInt(30)), ends, length, 1 + random.nextInt(4), selvedge, order(random));
    return new Plan("Any", pieces ? pieces(random) : List.of(), warp, wefts(random, pieces), allowances(random), 1 + random.nextInt(3));
  }

  private static List<OrderEntry> order(Random random) {
    int groups = 1 + random.nextInt(3);
    List<OrderEntry> order = new ArrayList<>();
    for (int i = 0; i < groups; i++) {
      order.add(new OrderEntry(YARNS.get(i), "group " + i, new OrderEntry.Share(BigFraction.of(1, groups)), 1 + random.nextInt(2), random.nextInt(4) == 0, random.nextInt(2)));
    }
    return order;
  }

  private static List<Piece> pieces(Random random) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      Length hems = new Length(random.nextInt(2) * 500L);
      pieces.add(new Piece("piece " + i, 1 + random.nextInt(4), new Length(3_000 + random.nextInt(9_000)), new Length(2_000 + random.nextInt(5_000)), hems, new Length(random.nextInt(2) * 700L)));
    }
    return pieces;
  }

  private static List<Weft> wefts(Random random, boolean pieces) {
    Sett picks = Sett.perCentimetre(4 + random.nextInt(12));
    Optional<Length> length = pieces || random.nextBoolean() ? Optional.empty() : Optional.of(new Length(9_000 + random.nextInt(9_000)));
    List<Weft> wefts = new ArrayList<>(List.of(weft(1, picks, length), weft(2, picks, length)));
    if (random.nextBoolean()) {
      wefts.add(new Weft(YARNS.get(3), Sett.perCentimetre(2), BigFraction.ONE, 2, BigFraction.of(1, 3), length));
    }
    return wefts;
  }

  private static Weft weft(int yarn, Sett picks, Optional<Length> length) {
    return new Weft(YARNS.get(yarn), picks, BigFraction.of(1, 2), 1, BigFraction.ONE, length);
  }

  private static Allowances allowances(Random random) {
    return new Allowances(
        Percentage.parse(random.nextInt(20) + (random.nextBoolean() ? " % of yarn" : " %")), percent(random, 12), percent(random, 12), percent(random, 20), percent(random, 20),
        new Length(random.nextInt(4_000)), new Length(random.nextInt(9_000)), new Length(random.nextInt(2) * 300L), percent(random, 4), random.nextInt(2) * 6, new Length(random.nextInt(2) * 500L));
  }

  private static Percentage percent(Random random, int below) {
    return Percentage.parse(random.nextInt(below) + " %");
  }
}
