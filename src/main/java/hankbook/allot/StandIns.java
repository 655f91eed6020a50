package hankbook.allot;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.yarn.Colour;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Looks on the shelf for what could stand in the place of a yarn that is short: of like grist, and spun of the same families of fibres. */
public final class StandIns {
  private static final Comparator<StandIn> LARGEST_FIRST =
      Comparator.comparing((StandIn standIn) -> standIn.difference().isEmpty()).thenComparing(StandIn::free, Comparator.reverseOrder()).thenComparing(StandIn::yarn);

  private final PlanCheck check;
  private final List<Skein> stock;
  private final Judgement judgement;
  private final Set<YarnColour> before;

  private StandIns(PlanCheck check, List<Skein> stock, Judgement judgement) {
    this.check = check;
    this.stock = stock;
    this.judgement = judgement;
    this.before = Set.copyOf(check.shortYarns());
  }

  /** What could stand in, for one short yarn after the other: the largest free first, those whose colour is not known last. */
  static List<StandIn> of(PlanCheck check, List<Skein> stock, Judgement judgement) {
    StandIns standIns = new StandIns(check, stock, judgement);
    return check.shortYarns().stream().flatMap(yarn -> standIns.inPlaceOf(yarn).stream().sorted(LARGEST_FIRST)).toList();
  }

  private List<StandIn> inPlaceOf(YarnColour yarn) {
    Facts wanted = facts(yarn);
    Set<YarnColour> others = stock.stream().map(Skein::yarn).filter(other -> !other.equals(yarn)).collect(Collectors.toCollection(TreeSet::new));
    List<StandIn> standIns = new ArrayList<>();
    for (YarnColour other : others) {
      Facts offered = facts(other);
      if (free(other).isPositive() && alike(wanted, offered)) {
        standIns.add(standIn(wanted, offered));
      }
    }
    return standIns;
  }

  /** What the shelf tells of a yarn, be it by another colour of it. */
  private record Facts(YarnColour yarn, Optional<Grist> grist, String fibre, Optional<Colour> colour) {
    Optional<BigFraction> heavierThan(Facts other) {
      return grist.flatMap(mine -> other.grist.map(its -> mine.tex().divide(its.tex()).subtract(1)));
    }
  }

  private Facts facts(YarnColour yarn) {
    List<Skein> own = PlanCheck.skeinsOf(yarn, stock);
    List<Skein> known = new ArrayList<>(own);
    stock.stream().filter(skein -> skein.yarn().yarn().equals(yarn.yarn())).forEach(known::add);
    return new Facts(
        yarn,
        known.stream().flatMap(skein -> skein.knownGrist().stream()).findFirst(),
        known.stream().map(Skein::fibre).filter(fibre -> !fibre.isEmpty()).findFirst().orElse(""),
        own.stream().map(Skein::hex).filter(hex -> !hex.isEmpty()).findFirst().map(Colour::ofHex));
  }

  private boolean alike(Facts wanted, Facts offered) {
    if (wanted.yarn().yarn().equals(offered.yarn().yarn())) {
      return true;
    }
    boolean near = offered.heavierThan(wanted).filter(heavier -> heavier.abs().compareTo(judgement.standInGrist().fraction()) <= 0).isPresent();
    return near && FibreFamily.same(wanted.fibre(), offered.fibre());
  }

  private StandIn standIn(Facts wanted, Facts offered) {
    Plan changed = PlanVariants.withYarn(check.plan(), wanted.yarn(), offered.yarn());
    Length used = check.yardage().needs().stream().filter(need -> need.yarn().equals(offered.yarn())).map(Need::length).reduce(Length.ZERO, Length::plus);
    boolean covers = new Trial(stock, judgement).left(changed).stream().allMatch(yarn -> before.contains(yarn) && !yarn.equals(offered.yarn()));
    return new StandIn(
        offered.yarn(),
        wanted.yarn(),
        Length.max(Length.ZERO, free(offered.yarn()).minus(used)),
        offered.heavierThan(wanted),
        wanted.colour().flatMap(colour -> offered.colour().map(colour::differenceTo)),
        covers,
        changed);
  }

  private Length free(YarnColour yarn) {
    return PlanCheck.skeinsOf(yarn, stock).stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
  }
}
