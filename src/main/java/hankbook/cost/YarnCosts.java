package hankbook.cost;

import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.allot.Share;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What the yarn of a plan costs: of each skein that gives some, and of what is still to buy. */
final class YarnCosts {
  private final PlanCheck check;
  private final Costing costing;
  private final Map<String, Skein> skeins;
  private final YarnUses uses;
  private final Map<YarnUse, Map<YarnColour, List<CostLine>>> given = new EnumMap<>(YarnUse.class);
  private final List<CostLine> toBuy = new ArrayList<>();
  private final List<Remnant> remnants = new ArrayList<>();
  private final List<Uncounted> uncounted = new ArrayList<>();

  YarnCosts(PlanCheck check, List<Skein> stock, Costing costing) {
    this.check = check;
    this.costing = costing;
    this.skeins = stock.stream().collect(Collectors.toMap(Skein::code, Function.identity(), (one, _) -> one));
    this.uses = new YarnUses(check.plan(), check.yardage());
    check.shares().forEach(this::given);
    check.shortYarns().forEach(this::lacking);
  }

  private void given(Share share) {
    Skein skein = skein(share);
    Length taken = share.warp().plus(share.weft());
    Length left = skein.holds().minus(taken);
    SkeinWorth worth = SkeinWorth.of(costing, share.code());
    Optional<Money> cost = worth.of(taken);
    cost.ifPresentOrElse(
        amount -> split(uses.of(skein.yarn(), share.warp(), share.weft()), amount).forEach(
            (use, line) -> given.computeIfAbsent(use, _ -> new LinkedHashMap<>()).computeIfAbsent(skein.yarn(), _ -> new ArrayList<>())
                .add(CostLine.ofYarn(skein.code(), skein.code(), line.length(), line.cost()))),
        () -> uncounted.add(new Uncounted(Phrase.of("{0}, {1} of {2}", skein.code(), Phrase.yarn(taken, 2), skein.yarn()), worth.whyUnknown().orElseThrow())));
    if (left.isPositive()) {
      remnants.add(new Remnant(skein.code(), skein.yarn(), left, cost.map(amount -> worth.all().minus(amount)), isUseful(left)));
    }
  }

  private Skein skein(Share share) {
    return Objects.requireNonNull(skeins.get(share.code()));
  }

  private void lacking(YarnColour yarn) {
    Lack lack = Lack.of(yarn, check, check.shares().stream().filter(share -> skein(share).yarn().equals(yarn)).toList());
    Phrase what = Phrase.of("{0}, {1} still to buy", yarn, Phrase.yarn(lack.length(), 2));
    Optional<Purchase> purchase = costing.purchases().stream().filter(buying -> buying.yarn().equals(yarn)).findFirst();
    Optional<Worth> bought = purchase.flatMap(Lack::bought);
    if (bought.isEmpty()) {
      boolean shown = purchase.filter(buying -> buying.putUps().isPresent()).isPresent();
      uncounted.add(new Uncounted(what, shown ? Phrase.of("no price of it is known") : Phrase.of("nothing shows how it is put up")));
    } else if (!bought.get().cost().getCurrencyUnit().equals(costing.currency())) {
      uncounted.add(new Uncounted(what, Phrase.of("its price is in {0}, and this is reckoned in {1}", bought.get().cost().getCurrencyUnit(), costing.currency())));
    } else {
      buy(yarn, lack, bought.get());
    }
  }

  private void buy(YarnColour yarn, Lack lack, Worth bought) {
    Length used = Length.min(lack.length(), bought.length());
    List<CostLine> lines = new ArrayList<>();
    split(uses.of(yarn, lack.warp(), lack.weft()), bought.of(used)).forEach((use, part) -> lines.add(CostLine.ofYarn(use.key(), use.words(), part.length(), part.cost())));
    toBuy.add(CostLine.ofAllYarn(key(yarn), yarn.toString(), costing.currency(), lines));
    Worth left = bought.without(used);
    if (left.length().isPositive()) {
      remnants.add(new Remnant("", yarn, left.length(), Optional.of(left.cost()), isUseful(left.length())));
    }
  }

  /** A cost shared over lengths. */
  private static Map<YarnUse, Worth> split(Map<YarnUse, Length> lengths, Money cost) {
    Map<YarnUse, Worth> parts = new EnumMap<>(YarnUse.class);
    List<Map.Entry<YarnUse, Length>> order = List.copyOf(lengths.entrySet());
    List<Money> amounts = order.isEmpty() ? List.of() : SharedOut.of(cost, order.stream().map(use -> use.getValue().exactTenths()).toList());
    for (int i = 0; i < order.size(); i++) {
      parts.put(order.get(i).getKey(), new Worth(order.get(i).getValue(), amounts.get(i)));
    }
    return parts;
  }

  private boolean isUseful(Length left) {
    return left.compareTo(costing.usefulRemnant()) > 0;
  }

  /** All of it as one line: by what becomes of it, yarn and skein. */
  CostLine line() {
    List<CostLine> lines = new ArrayList<>();
    given.forEach((use, yarns) -> {
      List<CostLine> parts = new ArrayList<>();
      yarns.forEach((yarn, ofSkeins) -> parts.add(CostLine.ofAllYarn(key(yarn), yarn.toString(), costing.currency(), ofSkeins)));
      lines.add(CostLine.ofAllYarn(use.key(), use.words(), costing.currency(), parts));
    });
    if (!toBuy.isEmpty()) {
      lines.add(CostLine.ofAllYarn("toBuy", "Still to buy", costing.currency(), toBuy));
    }
    return CostLine.ofAllYarn("yarn", "Yarn", costing.currency(), lines);
  }

  List<Remnant> remnants() {
    return remnants;
  }

  List<Uncounted> uncounted() {
    return uncounted;
  }

  private static String key(YarnColour yarn) {
    return yarn.yarn() + ", " + yarn.colour();
  }
}
