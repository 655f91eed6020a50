package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.gear.Gear;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.plan.Plan;
import hankbook.reckon.Findings;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Lets plans take their yarn one after another, by the same rule as {@link Reserve}: what the plan's check chose is reserved, what it has and no
 * longer wants is released to those after it.
 */
final class TakingTurns {
  private final Map<String, ShelfSkein> skeins = new LinkedHashMap<>();
  private final Judgement judgement;
  private final Findings learnt;

  /** From all skeins of the house. */
  TakingTurns(List<ShelfSkein> house, Judgement judgement, Findings learnt) {
    this.judgement = judgement;
    this.learnt = learnt;
    house.forEach(held -> skeins.put(held.skein().code(), held));
  }

  /**
   * What is known of a plan before its turn.
   *
   * @param name the plan
   * @param text of its file
   * @param isWoven whether some of it is cloth
   * @param gaveBack whether the last that was done with its loom was to put back what was left over
   */
  record Waiting(String name, String text, boolean isWoven, boolean gaveBack) {}

  /** What has become of a plan as far as the places of its yarn tell. */
  private QueuedPlan.Stands stands(Waiting plan) {
    boolean onLoom = skeins.values().stream().anyMatch(held -> held.onLoom().getOrDefault(plan.name(), Length.ZERO).isPositive());
    if (hasReserved(plan) || !(onLoom || plan.isWoven())) {
      return QueuedPlan.Stands.OPEN;
    }
    return onLoom ? QueuedPlan.Stands.ON_THE_LOOM : QueuedPlan.Stands.WOVEN;
  }

  private boolean hasReserved(Waiting plan) {
    return skeins.values().stream().anyMatch(held -> held.reserved().getOrDefault(plan.name(), Length.ZERO).isPositive());
  }

  /** Lets the next plan take its yarn. */
  QueuedPlan next(Waiting waiting) {
    QueuedPlan.Stands stands = stands(waiting);
    if (stands != QueuedPlan.Stands.OPEN && (waiting.isWoven() || waiting.gaveBack())) {
      return new QueuedPlan(waiting.name(), stands, "", List.of(), List.of());
    }
    try {
      return next(waiting.name(), stands, PlanFile.read(waiting.name(), waiting.text()));
    } catch (BadInput unfinished) {
      QueuedPlan.Stands still = stands == QueuedPlan.Stands.OPEN ? QueuedPlan.Stands.UNFINISHED : stands;
      return new QueuedPlan(waiting.name(), still, String.join("; ", unfinished.faults()), List.of(), List.of());
    }
  }

  private QueuedPlan next(String name, QueuedPlan.Stands stands, Plan plan) throws BadInput {
    List<ShelfSkein> house = List.copyOf(skeins.values());
    PlanCheck check = Answer.of(name, plan, new Means(Shelf.freeFor(name, house), judgement, Gear.UNKNOWN, learnt)).check();
    Reservation reservation = Reservation.of(check, house);
    if (stands == QueuedPlan.Stands.ON_THE_LOOM && !check.isShort() && reservation.lacking().isEmpty()) {
      return new QueuedPlan(name, stands, "", List.of(), List.of());
    }
    reservation.unwanted().forEach(this::move);
    reservation.lacking().forEach(this::move);
    Map<String, Length> given = new LinkedHashMap<>();
    check.shares().forEach(share -> given.merge(share.code(), share.warp().plus(share.weft()), Length::plus));
    List<QueuedPlan.Given> skeinsGiven = given.entrySet().stream().map(skein -> new QueuedPlan.Given(skein.getKey(), skein.getValue())).toList();
    return new QueuedPlan(name, stands, "", claims(check, house), skeinsGiven);
  }

  private static List<QueuedPlan.Claim> claims(PlanCheck check, List<ShelfSkein> house) {
    Map<String, YarnColour> yarns = house.stream().map(ShelfSkein::skein).collect(Collectors.toMap(Skein::code, Skein::yarn));
    Map<YarnColour, Length> given = new HashMap<>();
    for (Share share : check.shares()) {
      YarnColour yarn = yarns.get(share.code());
      if (yarn != null) {
        given.merge(yarn, share.warp().plus(share.weft()), Length::plus);
      }
    }
    List<QueuedPlan.Claim> claims = new ArrayList<>();
    for (Cover cover : check.covers()) {
      Length lack = Length.max(cover.need().minus(given.getOrDefault(cover.yarn(), Length.ZERO)), Length.ZERO);
      claims.add(new QueuedPlan.Claim(cover.yarn(), cover.need(), cover.free(), lack, cover.verdict()));
    }
    return claims;
  }

  private void move(Transfer transfer) {
    skeins.computeIfPresent(transfer.skein(), (code, held) -> held.after(transfer));
  }
}
