package hankbook.cost;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.PutUp;
import hankbook.allot.Setting;
import hankbook.allot.Share;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** What holds of every cost, on random plans and shelves. */
class PlanCostProperties {
  /** A plan, a shelf that may be short of it, and what was paid for most of its skeins. */
  private record Case(Plan plan, List<Skein> stock, Map<String, List<Worth>> worths, Judgement judgement, Map<YarnColour, PutUp> prices) {
    static Case of(long seed) {
      Random random = new Random(seed);
      List<Piece> pieces = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(3); i++) {
        pieces.add(new Piece("piece " + i, 1 + random.nextInt(4), Mats.cm(30 + random.nextInt(60)), Mats.cm(10 + random.nextInt(20)), Mats.cm(random.nextInt(5)), Length.ZERO));
      }
      Plan plan = Mats.plan(pieces, Percentage.parse(random.nextInt(20) + " %"), random.nextInt(6));
      List<Skein> stock = new ArrayList<>();
      Map<String, List<Worth>> worths = new HashMap<>();
      for (int i = 0; i < 2 + random.nextInt(8); i++) {
        Length length = new Length(300_000 + random.nextInt(2_000_000));
        Skein skein = Mats.skein("S" + i, i % 2 == 0 ? Mats.WARP : Mats.WEFT, length.toString());
        stock.add(skein);
        if (random.nextInt(5) > 0) {
          worths.put(skein.code(), List.of(new Worth(length, Money.ofMinor(Mats.EUR, random.nextInt(5_000)))));
        }
      }
      Judgement judgement = Judgement.DEFAULT.with(Setting.OVERHEAD, random.nextInt(30) + " %").with(Setting.PLAN_OVERHEAD, random.nextInt(9) + " EUR");
      Judgement rated = random.nextBoolean() ? judgement.with(Setting.HOURLY_RATE, random.nextInt(5_000) / 100.0 + " EUR") : judgement;
      return new Case(plan, stock, worths, rated, Map.of(Mats.WARP, PutUp.parse("19.99 EUR / 137 m"), Mats.WEFT, PutUp.parse("7.01 EUR")));
    }

    PlanCost cost() {
      return Mats.cost(plan, stock, worths, judgement, prices);
    }

    Costing costing() {
      return Mats.costing(PlanCheck.of(plan, stock, judgement), stock, worths, judgement, prices);
    }
  }

  @Property(tries = 300, seed = "20261310")
  void theLeavesSumToTheTotalThePiecesToItTooAndNothingIsLessThanNothing(@ForAll @LongRange(max = 1_000_000) long seed) {
    PlanCost cost = Case.of(seed).cost();
    assertThat(sum(cost.total().leaves().map(CostLine::amount).toList())).isEqualTo(cost.total().amount());
    assertThat(sum(cost.pieces().stream().map(PieceCost::all).toList())).isEqualTo(cost.total().amount());
    cost.pieces().forEach(piece -> assertThat(piece.each().multipliedBy(piece.count()).getAmountMinorLong() + piece.dearer()).isEqualTo(piece.all().getAmountMinorLong()));
    assertThat(cost.total().leaves()).noneMatch(leaf -> leaf.amount().isNegative());
    assertThat(cost.remnants()).noneMatch(remnant -> remnant.worth().filter(Money::isNegative).isPresent());
  }

  @Property(tries = 300, seed = "20261311")
  void theYarnOfTheLinesAndWhatIsNotCountedIsAllThatTheSkeinsGiveAndThatLacks(@ForAll @LongRange(max = 1_000_000) long seed) {
    Case random = Case.of(seed);
    PlanCheck check = PlanCheck.of(random.plan(), random.stock(), random.judgement());
    PlanCost cost = random.cost();
    Map<String, Length> lines = new HashMap<>();
    cost.total().part("yarn").orElseThrow().parts().stream().filter(use -> !use.key().equals("toBuy")).flatMap(CostLine::leaves).forEach(
        leaf -> lines.merge(leaf.key(), leaf.length().orElseThrow(), Length::plus));
    for (Share share : check.shares()) {
      Length given = share.warp().plus(share.weft());
      if (random.worths().containsKey(share.code())) {
        assertThat(lines.get(share.code())).isEqualTo(given);
      } else {
        assertThat(cost.uncounted()).anyMatch(left -> left.what().english().startsWith(share.code() + ", "));
        assertThat(lines).doesNotContainKey(share.code());
      }
    }
  }

  /** That the parts of each tree make its figure is held as it is built. */
  @Property(tries = 200, seed = "20261316")
  void everyLineSaysWhatItIsMadeOfAndThatIsWhatItCosts(@ForAll @LongRange(max = 1_000_000) long seed) {
    Case random = Case.of(seed);
    PlanCost cost = random.cost();
    explained(random, cost, cost.total());
    cost.pieces().forEach(piece -> assertThat(CostBecause.each(piece).amount()).isEqualTo(Amount.Coins.of(piece.each())));
  }

  private static void explained(Case random, PlanCost cost, CostLine line) {
    Because why = CostBecause.of(cost, random.costing(), line);
    assertThat(why.amount()).isEqualTo(Amount.Coins.of(line.amount()));
    if (line.length().isEmpty() && cost.work().stream().anyMatch(work -> work.kind().key().equals(line.key()))) {
      assertThat(why.parts().getFirst().amount().exact().subtract(why.amount().exact()).abs().subtract(1).signum()).as("within a coin").isNotPositive();
    }
    line.parts().forEach(part -> explained(random, cost, part));
  }

  @Property(tries = 300, seed = "20261312")
  void whatIsTakenAndWhatIsLeftOfASkeinIsWhatWasPaidForIt(@ForAll @LongRange(max = 1_000_000) long seed) {
    Case random = Case.of(seed);
    PlanCost cost = random.cost();
    PlanCheck check = PlanCheck.of(random.plan(), random.stock(), random.judgement());
    for (Share share : check.shares()) {
      if (random.worths().containsKey(share.code())) {
        Money left = cost.remnants().stream().filter(remnant -> remnant.skein().equals(share.code())).findFirst().flatMap(Remnant::worth).orElse(Money.zero(Mats.EUR));
        assertThat(ofSkein(cost, share.code()).plus(left)).isEqualTo(random.worths().get(share.code()).getFirst().cost());
      }
    }
    Money bought = cost.total().part("yarn").flatMap(yarn -> yarn.part("toBuy")).map(CostLine::amount).orElse(Money.zero(Mats.EUR));
    Money leftOfIt = sum(cost.remnants().stream().filter(remnant -> remnant.skein().isEmpty()).flatMap(remnant -> remnant.worth().stream()).toList());
    assertThat(bought.plus(leftOfIt)).isEqualTo(cost.spendNow());
  }

  @Property(tries = 100, seed = "20261313")
  void inCoinsAThousandTimesAsSmallTheSameIsPaidButForTheRounding(@ForAll @LongRange(max = 1_000_000) long seed) {
    Case random = Case.of(seed);
    Map<String, List<Worth>> thousandfold = new HashMap<>();
    random.worths().forEach((code, held) -> thousandfold.put(code, held.stream().map(worth -> new Worth(worth.length(), worth.cost().multipliedBy(1000))).toList()));
    Map<YarnColour, PutUp> prices = new HashMap<>();
    random.prices().forEach((yarn, putUp) -> prices.put(yarn, new PutUp(putUp.each().multipliedBy(1000), putUp.holds())));
    Judgement judgement = random.judgement();
    for (Setting setting : List.of(Setting.HOURLY_RATE, Setting.PLAN_OVERHEAD)) {
      Optional<Money> set = judgement.money(setting);
      judgement = set.isEmpty() ? judgement : judgement.with(setting, MoneyText.print(set.get().multipliedBy(1000)));
    }
    long coarse = random.cost().total().amount().getAmountMinorLong() * 1000;
    long fine = new Case(random.plan(), random.stock(), thousandfold, judgement, prices).cost().total().amount().getAmountMinorLong();
    // Half a coin for each skein, each yarn that is bought, the work and the overheads, which add to them up to three tenths.
    long roundings = random.stock().size() + 4L;
    assertThat(Math.abs(fine - coarse)).isLessThanOrEqualTo(roundings * 500 * 13 / 10 + roundings);
  }

  @Property(tries = 300, seed = "20261314")
  void aMarginAndTheMarkupThatSaysTheSameMakeTheSamePriceAndLeaveTheCost(@ForAll @LongRange(max = 10_000_000) long coins, @ForAll @IntRange(max = 99) int percent) {
    Money cost = Money.ofMinor(Mats.EUR, coins);
    Percentage margin = Percentage.parse(percent + " %");
    // m of the price is m / (1 - m) of the cost.
    Percentage markup = new Percentage(margin.fraction().divide(margin.remaining()), Percentage.Base.UNSAID);
    Money price = new Pricing.Margin(margin).price(cost);
    assertThat(new Pricing.Markup(markup).price(cost)).isEqualTo(price);
    Money kept = Money.ofMinor(Mats.EUR, Exact.whole(BigFraction.of(price.getAmountMinorLong()).multiply(margin.remaining()), RoundingMode.HALF_UP));
    assertThat(kept).isEqualTo(cost);
  }

  @Property(tries = 100, seed = "20261315")
  void whatIsDrawnForAPlanCostsOnTheLoomWhatItWasCostedAt(@ForAll @LongRange(max = 1_000_000) long seed) {
    Case random = Case.of(seed);
    PlanCheck check = PlanCheck.of(random.plan(), random.stock(), random.judgement());
    PlanCost cost = random.cost();
    Map<String, Money> paid = new HashMap<>();
    random.worths().forEach((code, held) -> paid.put(code, held.getFirst().cost()));
    Place reserved = new Place.Reserved("Mats");
    Place loom = new Place.Loom("Mats");
    List<Entry> entries = new ArrayList<>();
    entries.add(entry(EntryKind.RECEIVE, random.stock().stream().map(skein -> new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), skein.holds())).toList()));
    if (!check.shares().isEmpty()) {
      entries.add(entry(EntryKind.RESERVE, taken(check, new Place.Shelf(), reserved)));
      entries.add(entry(EntryKind.DRAW, taken(check, reserved, loom)));
    }
    CostBook book = CostBook.of(Mats.EUR, entries, paid);
    for (Share share : check.shares()) {
      book.worth(share.code(), loom::equals).ifPresent(worth -> assertThat(worth.cost()).isEqualTo(ofSkein(cost, share.code())));
    }
    Money given = cost.total().part("yarn").orElseThrow().amount().minus(cost.total().part("yarn").flatMap(yarn -> yarn.part("toBuy")).map(CostLine::amount).orElse(Money.zero(Mats.EUR)));
    assertThat(PlanSpent.of(book, "Mats").total()).isEqualTo(given);
  }

  private static List<Transfer> taken(PlanCheck check, Place from, Place to) {
    return check.shares().stream().map(share -> new Transfer(share.code(), from, to, share.warp().plus(share.weft()))).toList();
  }

  private static Entry entry(EntryKind kind, List<Transfer> transfers) {
    return Entry.of(UUID.nameUUIDFromBytes(kind.name().getBytes(StandardCharsets.UTF_8)), kind, LocalDate.of(2026, 3, 14), "Ida", "", transfers);
  }

  private static Money ofSkein(PlanCost cost, String code) {
    return sum(cost.total().part("yarn").orElseThrow().leaves().filter(leaf -> leaf.key().equals(code)).map(CostLine::amount).toList());
  }

  private static Money sum(List<Money> amounts) {
    return amounts.stream().reduce(Money.zero(Mats.EUR), Money::plus);
  }
}
