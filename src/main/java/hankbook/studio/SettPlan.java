package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.gear.Diameters;
import hankbook.gear.SettAdvice;
import hankbook.gear.Weave;
import hankbook.measure.Sett;
import hankbook.measure.YarnNumber;
import hankbook.plan.OrderEntry;
import hankbook.plan.Plan;
import hankbook.plan.WarpOrder;
import hankbook.plan.Yardage;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** How closely the yarns of a plan's warp may be set, lying side by side as its order has them. */
public final class SettPlan {
  private SettPlan() {}

  /**
   * By what it is reckoned.
   *
   * @param factor the k of {@link Diameters}
   * @param weave another than the plan's
   * @param part of the fullest sett that is worked with
   */
  public record Wish(BigFraction factor, Optional<Weave> weave, BigFraction part) {}

  /**
   * Ends of the warp that are alike.
   *
   * @param strands in each end
   * @param ends how many
   * @param grist of one strand, where the shelf tells it
   */
  public record Kind(YarnColour yarn, int strands, int ends, Optional<YarnNumber> grist) {
    /** How many such ends lie side by side in an inch, where the grist is known. */
    public Optional<Diameters> diameters(BigFraction factor) {
      return grist.map(number -> Diameters.of(number.grist().times(strands), factor));
    }
  }

  /**
   * The answer.
   *
   * @param kinds in the order of the warp
   * @param weave the plan's or the one that was wished; plain where neither is said
   * @param advice empty where the grist of a yarn is not known
   * @param planned the plan's sett
   */
  public record Advised(List<Kind> kinds, Weave weave, Optional<SettAdvice> advice, Sett planned) {
    public Advised {
      kinds = List.copyOf(kinds);
    }

    /** The closest sett that the weave allows, in ends to the length that the plan's sett speaks of. */
    public Optional<Sett> fullest() {
      return advice.map(known -> known.fullest(planned.span()));
    }

    /** The sett to begin with, in ends to the length that the plan's sett speaks of. */
    public Optional<Sett> working() {
      return advice.map(known -> known.working(planned.span()));
    }
  }

  /**
   * Advises on a plan.
   *
   * @param stock the skeins that tell the grist of a yarn, be it by another colour of it
   * @throws BadInput if the plan does not add up, or the wish is out of range
   */
  public static Advised of(Plan plan, List<Skein> stock, Wish wish) throws BadInput {
    return Answer.reckoned(plan.name(), () -> advised(plan, stock, wish));
  }

  private static Advised advised(Plan plan, List<Skein> stock, Wish wish) {
    List<Kind> kinds = kinds(plan, stock);
    Weave weave = wish.weave().or(() -> plan.dressing().weave()).orElse(Weave.PLAIN);
    boolean known = !kinds.isEmpty() && kinds.stream().allMatch(kind -> kind.grist().isPresent());
    Optional<SettAdvice> advice = known ? Optional.of(new SettAdvice(diameters(kinds, wish.factor()), weave, wish.part())) : Optional.empty();
    return new Advised(kinds, weave, advice, plan.warp().sett());
  }

  private static Diameters diameters(List<Kind> kinds, BigFraction factor) {
    return Diameters.of(kinds.stream().map(kind -> new Diameters.Kind(kind.grist().orElseThrow().grist().times(kind.strands()), kind.ends())).toList(), factor);
  }

  private static List<Kind> kinds(Plan plan, List<Skein> stock) {
    record Alike(YarnColour yarn, int strands) {}
    List<OrderEntry> order = plan.warp().order();
    List<Long> ends = WarpOrder.ends(plan.warp(), Yardage.of(plan).width().ends());
    Map<Alike, Long> counted = new LinkedHashMap<>();
    for (int i = 0; i < order.size(); i++) {
      counted.merge(new Alike(order.get(i).yarn(), order.get(i).strands()), ends.get(i), Long::sum);
    }
    List<Kind> kinds = new ArrayList<>();
    counted.forEach((alike, count) -> {
      if (count > 0) {
        kinds.add(new Kind(alike.yarn(), alike.strands(), Math.toIntExact(count), grist(alike.yarn(), stock)));
      }
    });
    return kinds;
  }

  private static Optional<YarnNumber> grist(YarnColour yarn, List<Skein> stock) {
    Stream<Skein> own = stock.stream().filter(skein -> skein.yarn().equals(yarn));
    Stream<Skein> others = stock.stream().filter(skein -> skein.yarn().yarn().equals(yarn.yarn()));
    return Stream.concat(own, others).flatMap(skein -> skein.grist().stream()).findFirst();
  }
}
