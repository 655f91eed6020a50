package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.measure.YarnNumber;
import hankbook.plan.Allowances;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.numbers.fraction.BigFraction;

class FitProperties {
  private static final List<YarnColour> YARNS =
      Stream.of("Gold", "Plum", "Pearl", "Peat").map(colour -> new YarnColour(colour.equals("Pearl") ? "Selkie" : "Gorse", colour)).toList();

  /** A plan and what is on the shelf. */
  record Table(Plan plan, List<Skein> stock) {}

  @Property(tries = 25, seed = "20261206")
  void everyAnswerPassesAndOneStepMoreIsShort(@ForAll("tables") Table table) {
    OneStepMore.verify(table.plan(), Plainly.fit(table.plan(), table.stock()), table.stock());
  }

  @Property(tries = 25, seed = "20261207")
  void everyRemedyOfThePlanCuresWhatItSaysAndMakesNothingElseShort(@ForAll("tables") Table table) {
    PlanCheck check = Plainly.check(table.plan(), table.stock());
    for (Remedy remedy : Remedies.of(check, table.stock(), Judgement.DEFAULT)) {
      List<Skein> stock = table.stock();
      for (Purchase purchase : remedy.change() instanceof Change.Buying(List<Purchase> bought) ? bought : List.<Purchase>of()) {
        stock = Purchase.bought(purchase, stock);
      }
      Set<YarnColour> still = new HashSet<>(check.shortYarns());
      remedy.cures().forEach(still::remove);
      PlanCheck after = Plainly.check(remedy.plan(), stock);
      assertThat(remedy.cures()).isNotEmpty();
      assertThat(check.shortYarns()).containsAll(remedy.cures());
      assertThat(still).as(remedy.words()).containsAll(after.shortYarns());
      assertThat(after.isShort()).as(remedy.words()).isNotEqualTo(remedy.whole());
    }
  }

  @Property(tries = 25, seed = "20261208")
  void ofEachQuantityNoMoreIsGivenUpThanHasToBe(@ForAll("tables") Table table) {
    PlanCheck check = Plainly.check(table.plan(), table.stock());
    List<Remedy> remedies = Remedies.of(check, table.stock(), Judgement.DEFAULT);
    for (Lever lever : check.isShort() ? Lever.of(check) : List.<Lever>of()) {
      OptionalLong covered = countedUp(lever, table.stock());
      covered.ifPresent(steps -> {
        Plan most = lever.plan().apply(steps);
        assertThat(remedies).extracting(Remedy::change).contains(lever.change().apply(most));
      });
    }
  }

  /** The steps before the first that is short, one by one. */
  private static OptionalLong countedUp(Lever lever, List<Skein> stock) {
    long steps = lever.least();
    while (steps < lever.asked() && !PlanCheck.isShort(lever.plan().apply(steps), stock, Judgement.DEFAULT)) {
      steps++;
    }
    return steps > lever.least() && PlanCheck.isShort(lever.plan().apply(lever.asked()), stock, Judgement.DEFAULT) ? OptionalLong.of(steps - 1) : OptionalLong.empty();
  }

  @Property(tries = 25, seed = "20261209")
  void whatHelpsThePlanStandsBeforeWhatHelpsAYarnAndMoneyAndGreaterChangesLast(@ForAll("tables") Table table) {
    List<Remedy> remedies = Remedies.of(Plainly.check(table.plan(), table.stock()), table.stock(), Judgement.DEFAULT);
    Comparator<Remedy> rule =
        Comparator.comparingInt((Remedy remedy) -> (remedy.whole() ? 0 : 2) + (remedy.change() instanceof Change.Buying ? 1 : 0))
            .thenComparingDouble(remedy -> remedy.change().givenUp().doubleValue());
    assertThat(remedies).isSortedAccordingTo(rule);
    assertThat(remedies).allSatisfy(remedy -> assertThat(remedy.change().givenUp().doubleValue()).isBetween(0.0, 2.0));
  }

  @Property(tries = 25, seed = "20261210")
  void oneSkeinMoreNeverMakesAnythingLess(@ForAll("tables") Table table, @ForAll Random random) {
    List<Skein> more = new ArrayList<>(table.stock());
    more.add(skein("more", YARNS.get(random.nextInt(YARNS.size())), 1 + random.nextInt(400), false));
    Fit before = Plainly.fit(table.plan(), table.stock());
    Fit after = Plainly.fit(table.plan(), more);
    assertThat(after.longestWarp()).isGreaterThanOrEqualTo(before.longestWarp());
    assertThat(after.mostEnds()).isGreaterThanOrEqualTo(before.mostEnds());
    assertThat(after.mostPieces().orElse(0)).isGreaterThanOrEqualTo(before.mostPieces().orElse(0));
    assertThat(after.longestPiece().orElse(Length.ZERO)).isGreaterThanOrEqualTo(before.longestPiece().orElse(Length.ZERO));
    assertThat(Plainly.check(table.plan(), table.stock()).shortYarns()).containsAll(Plainly.check(table.plan(), more).shortYarns());
  }

  @Provide
  Arbitrary<Table> tables() {
    return Arbitraries.longs().map(seed -> table(new Random(seed)));
  }

  private static Table table(Random random) {
    boolean pieces = random.nextInt(4) > 0;
    List<Piece> cut = pieces ? pieces(random) : List.of();
    boolean endsGiven = !pieces || random.nextInt(3) == 0;
    int selvedges = random.nextInt(3);
    int ends = selvedges + 20 + random.nextInt(80);
    OptionalInt outright = endsGiven ? OptionalInt.of(ends) : OptionalInt.empty();
    Optional<Length> length = !pieces || random.nextInt(4) == 0 ? Optional.of(Length.parse((200 + random.nextInt(800)) + " cm")) : Optional.empty();
    Sett sett = Sett.parse(List.of("10/cm", "6/cm", "24/in", "75/10 cm", "8.5/cm").get(random.nextInt(5)));
    Warp warp = new Warp(sett, outright, length, 1 + random.nextInt(4), selvedges, order(random, endsGiven ? ends : 0));
    Plan plan = new Plan("plan", cut, warp, wefts(random, !pieces && random.nextBoolean()), allowances(random), 1);
    List<Skein> stock = new ArrayList<>();
    for (YarnColour yarn : YARNS) {
      for (int i = random.nextInt(4); i > 0; i--) {
        stock.add(skein(yarn.colour() + i, yarn, 5 + random.nextInt(400), random.nextBoolean()));
      }
    }
    return new Table(plan, stock);
  }

  private static List<Piece> pieces(Random random) {
    Piece first = new Piece("first", 1 + random.nextInt(5), length(random, 200), length(random, 20), Length.parse("4 cm"), Length.ZERO);
    Piece second = new Piece("second", 1 + random.nextInt(3), length(random, 90), length(random, 15), Length.ZERO, Length.parse("10 cm"));
    return random.nextBoolean() ? List.of(first) : List.of(first, second);
  }

  private static Length length(Random random, int most) {
    int count = 3 + random.nextInt(most);
    return Length.parse(random.nextInt(3) == 0 ? count + " x 0.5 in" : count + " cm");
  }

  private static List<OrderEntry> order(Random random, int ends) {
    if (ends > 0 && random.nextBoolean()) {
      int first = random.nextInt(ends);
      return List.of(new OrderEntry(YARNS.get(0), new OrderEntry.Ends(first), 1), new OrderEntry(YARNS.get(1), new OrderEntry.Ends(ends - first), 1));
    }
    int tenths = random.nextInt(11);
    return List.of(share(YARNS.get(0), tenths), share(YARNS.get(random.nextInt(2)), 10 - tenths));
  }

  private static OrderEntry share(YarnColour yarn, int tenths) {
    return new OrderEntry(yarn, new OrderEntry.Share(BigFraction.of(tenths, 10)), 1);
  }

  private static List<Weft> wefts(Random random, boolean ofALength) {
    Sett picks = Sett.parse(List.of("9/cm", "20/in", "7.5/cm").get(random.nextInt(3)));
    Optional<Length> length = ofALength ? Optional.of(Length.parse("123 cm")) : Optional.empty();
    return List.of(new Weft(YARNS.get(random.nextInt(3)), picks, BigFraction.ONE, 1, BigFraction.ONE, length));
  }

  private static Allowances allowances(Random random) {
    return new Allowances(
        Percentage.parse(random.nextInt(12) + " %"), Percentage.parse("5 % of yarn"), Percentage.parse(random.nextInt(9) + " %"), Percentage.parse("7 %"),
        Percentage.parse("6 %"), Length.parse(random.nextInt(50) + " cm"), Length.parse("60 cm"), Length.parse("2 cm"), Percentage.parse("1 %"), random.nextInt(2),
        random.nextBoolean() ? Length.ZERO : Length.parse("5 cm"));
  }

  private static Skein skein(String code, YarnColour yarn, int metres, boolean opened) {
    return new Skein(
        code, yarn, "", "wool", Optional.of(YarnNumber.parse("tex 100")), PackageForm.SKEIN, Optional.of(Length.metres(metres)), Optional.empty(), opened, "", "",
        Optional.empty(), Optional.empty(), Optional.empty());
  }
}
