package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * What to buy of a yarn that is short.
 *
 * @param yarn the yarn and its colour
 * @param putUps how many whole put-ups, as large as the one last received; empty where the shelf shows none to judge by, or none is
 *     long enough for an end
 * @param each what one of them cost when it was last paid for, or the price that was named; empty where no price of one as large is known
 * @param holds the yarn on one of them; empty where the shelf shows none to judge by
 */
public record Purchase(YarnColour yarn, OptionalInt putUps, Optional<Money> each, Optional<Length> holds) {
  private static final int MOST = 1_000;
  private static final Comparator<Skein> NEWEST = Comparator.comparing(skein -> skein.received().orElse(LocalDate.MIN));

  /** What all of them cost at that price, where it is known. */
  public Optional<Money> total() {
    return putUps.isEmpty() ? Optional.empty() : each.map(price -> price.multipliedBy(putUps.getAsInt()));
  }

  /** What several purchases cost together; empty where a price is not known, or the prices are not all of one currency. */
  public static Optional<Money> total(List<Purchase> purchases) {
    List<Money> totals = purchases.stream().flatMap(purchase -> purchase.total().stream()).toList();
    boolean known = totals.size() == purchases.size() && totals.stream().map(Money::getCurrencyUnit).distinct().count() == 1;
    return known ? Optional.of(Money.total(totals)) : Optional.empty();
  }

  static List<Purchase> of(PlanCheck check, List<Skein> stock, Judgement judgement) {
    return of(check, stock, judgement, Map.of());
  }

  /**
   * What to buy of each yarn of a plan that is short.
   *
   * @param named put-ups whose price was named, and their length where it is another than the shelf shows
   */
  public static List<Purchase> of(PlanCheck check, List<Skein> stock, Judgement judgement, Map<YarnColour, PutUp> named) {
    return check.shortYarns().stream().map(yarn -> of(check, yarn, stock, judgement.usefulRemnant(), Optional.ofNullable(named.get(yarn)))).toList();
  }

  /** The stock with what is to be bought in it too. */
  static List<Skein> bought(Purchase purchase, List<Skein> stock) {
    Skein like = shown(purchase.yarn, stock).stream().max(NEWEST).orElseThrow();
    return with(stock, purchase.yarn, like, purchase.putUps.orElseThrow());
  }

  private static Purchase of(PlanCheck check, YarnColour yarn, List<Skein> stock, Length usefulRemnant, Optional<PutUp> named) {
    List<Skein> held = PlanCheck.skeinsOf(yarn, stock);
    List<Skein> shown = shown(yarn, stock);
    Optional<Skein> like = named.flatMap(PutUp::holds).map(holds -> asNamed(yarn, holds)).or(() -> shown.stream().max(NEWEST));
    List<Need> needs = check.yardage().needs().stream().filter(need -> need.yarn().equals(yarn)).toList();
    OptionalInt count = like.isPresent() ? fewest(needs, held, yarn, like.get(), usefulRemnant) : OptionalInt.empty();
    return new Purchase(yarn, count, named.map(PutUp::each).or(() -> like.flatMap(putUp -> price(shown, putUp))), like.map(Purchase::length));
  }

  private static Optional<Money> price(List<Skein> shown, Skein like) {
    Predicate<Skein> asLarge = skein -> length(skein).equals(length(like));
    return shown.stream().filter(asLarge).filter(skein -> skein.cost().isPresent()).max(NEWEST).flatMap(Skein::cost);
  }

  private static OptionalInt fewest(List<Need> needs, List<Skein> held, YarnColour yarn, Skein like, Length usefulRemnant) {
    long lacks = Largest.of(count -> count <= MOST && YarnCheck.isShort(needs, with(held, yarn, like, Math.toIntExact(count)), usefulRemnant, Allotting.effort()));
    return lacks < MOST ? OptionalInt.of(Math.toIntExact(lacks + 1)) : OptionalInt.empty();
  }

  /** What shows how the yarn is put up: skeins of this colour, or of another where there are none, as they were sold. */
  private static List<Skein> shown(YarnColour yarn, List<Skein> stock) {
    List<Skein> own = putUps(PlanCheck.skeinsOf(yarn, stock));
    return own.isEmpty() ? putUps(stock.stream().filter(skein -> skein.yarn().yarn().equals(yarn.yarn())).toList()) : own;
  }

  /** Unopened skeins; where there are none, opened ones by their label. What another plan has reserved of one does not make it smaller. */
  private static List<Skein> putUps(List<Skein> skeins) {
    List<Skein> unopened = skeins.stream().filter(skein -> !skein.opened() && length(skein).isPositive()).toList();
    return unopened.isEmpty() ? skeins.stream().map(Skein::asLabelled).filter(skein -> length(skein).isPositive()).toList() : unopened;
  }

  private static Length length(Skein skein) {
    return skein.measurement().length().orElse(Length.ZERO);
  }

  private static List<Skein> with(List<Skein> held, YarnColour yarn, Skein like, int count) {
    List<Skein> more = new ArrayList<>(held);
    String mark = unusedMark(held);
    for (int i = 1; i <= count; i++) {
      more.add(bought(yarn, like, mark + i));
    }
    return more;
  }

  /** No code on the shelf may be taken for a put-up that is not there yet. */
  private static String unusedMark(List<Skein> stock) {
    Stream<String> marks = IntStream.iterate(1, number -> number + 1).mapToObj(number -> number + "+");
    return marks.filter(mark -> stock.stream().noneMatch(skein -> skein.code().startsWith(mark))).findFirst().orElseThrow();
  }

  private static Skein asNamed(YarnColour yarn, Length holds) {
    return new Skein(
        "named", yarn, "", "", Optional.empty(), PackageForm.SKEIN, Optional.of(holds), Optional.empty(), false, "", "", Optional.empty(), Optional.empty(),
        Optional.empty());
  }

  private static Skein bought(YarnColour yarn, Skein like, String code) {
    return new Skein(
        code, yarn, like.hex(), like.fibre(), like.grist(), like.form(), like.label(), like.turns(), like.weighing(), false, "bought", "",
        Optional.empty(), Optional.empty(), Optional.empty(), like.sample());
  }
}
