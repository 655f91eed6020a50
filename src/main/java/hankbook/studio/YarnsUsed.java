package hankbook.studio;

import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import hankbook.reckon.Actuals;
import hankbook.reckon.Leftover;
import hankbook.reckon.YarnUsed;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Kept;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a plan really took of each yarn, as the places of its cloth, its thrums and its samples say.
 *
 * @param plan its name
 * @param balances of the whole ledger with the book of the plan squared
 * @param actuals by which it was
 * @param posted the entries that squared it, from which on a skein's measurements are later ones; none where nothing was posted yet
 */
record YarnsUsed(Session session, String plan, Balances balances, Actuals actuals, Set<UUID> posted) {
  /** Each yarn of a plan, in its order, then what it does not name by name. */
  List<YarnUsed> inOrderOf(Plan asPlanned) {
    Map<YarnColour, List<Skein>> skeins = skeins();
    Set<YarnColour> yarns = Yardage.of(asPlanned).needs().stream().map(Need::yarn).collect(Collectors.toCollection(LinkedHashSet::new));
    skeins.keySet().stream().filter(yarn -> used(skeins.getOrDefault(yarn, List.of())).isPositive()).sorted().forEach(yarns::add);
    Doubts doubts = Settings.judgement(session).doubts();
    return yarns.stream().map(yarn -> used(yarn, skeins.getOrDefault(yarn, List.of()), doubts)).toList();
  }

  private Map<YarnColour, List<Skein>> skeins() {
    Map<String, GristSample> samples = session.gristSamples().all();
    return session.skeins().all().stream()
        .map(skein -> skein.withSample(Optional.ofNullable(samples.get(skein.yarn().yarn()))))
        .collect(Collectors.groupingBy(Skein::yarn));
  }

  private YarnUsed used(YarnColour yarn, List<Skein> skeins, Doubts doubts) {
    List<Skein> mostFirst = new ArrayList<>(skeins);
    mostFirst.sort(Comparator.comparing((Skein skein) -> used(skein)).reversed());
    String fibre = mostFirst.stream().map(Skein::fibre).filter(known -> !known.isEmpty()).findFirst().orElse("");
    return new YarnUsed(
        yarn, fibre, mostFirst.stream().map(Skein::knownGrist).flatMap(Optional::stream).findFirst(), used(skeins),
        sum(skeins, skein -> at(skein, new Place.Thrums(plan))), sum(skeins, skein -> at(skein, new Place.Sample(plan))), uncertainty(skeins, doubts));
  }

  private Length used(List<Skein> skeins) {
    return sum(skeins, this::used);
  }

  private Length used(Skein skein) {
    return at(skein, new Place.Cloth(plan)).plus(at(skein, new Place.Thrums(plan))).plus(at(skein, new Place.Sample(plan)));
  }

  private Length at(Skein skein, Place place) {
    return balances.at(skein.code(), place);
  }

  private static Length sum(List<Skein> skeins, Function<Skein, Length> part) {
    return skeins.stream().map(part).reduce(Length.ZERO, Length::plus);
  }

  private Length uncertainty(List<Skein> skeins, Doubts doubts) {
    Map<String, Leftover> leftovers = actuals.leftovers().stream().collect(Collectors.toMap(Leftover::skein, Function.identity()));
    List<Skein> before = new ArrayList<>();
    List<Skein> after = new ArrayList<>();
    for (Skein skein : skeins) {
      Leftover leftover = leftovers.get(skein.code());
      if (leftover != null && used(skein).isPositive()) {
        Skein left = left(skein, leftover.left());
        after.add(left);
        before.add(before(skein).withLeft(left.holds().plus(used(skein)), true));
      }
    }
    return Uncertainty.ofDifference(before, after, doubts);
  }

  private static Skein left(Skein skein, Leftover.Left left) {
    var measures = LeftOn.measures(left);
    Length length = switch (left) {
      case Leftover.Left.UsedUp _ -> Length.ZERO;
      case Leftover.Left.OfLength(Length known) -> known;
      default -> measures.measurement(skein.grist(), skein.sample(), skein.fibre()).length().orElse(Length.ZERO);
    };
    return skein.withKept(new Kept(length, Optional.empty(), Optional.of(measures)), true);
  }

  /** With how it was measured before its leftover was. */
  private Skein before(Skein skein) {
    List<Remeasurement> earlier = new ArrayList<>();
    for (Remeasurement measured : session.remeasurements().of(skein.code())) {
      if (measured.entry().filter(posted::contains).isPresent()) {
        break;
      }
      earlier.add(measured);
    }
    Map<Holding, Length> own = balances.lengths().entrySet().stream()
        .filter(balance -> balance.getKey().skein().equals(skein.code()))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    return ShelfSkein.of(skein, new Balances(own), earlier, skein.sample(), false).skein();
  }
}
