package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import hankbook.reckon.Actuals;
import hankbook.reckon.DrawnSkein;
import hankbook.reckon.Leftover;
import hankbook.reckon.Squaring;
import hankbook.store.PlanVersion;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a ledger has for the squaring of a plan's book.
 *
 * @param name of the plan
 * @param plan as its yarn was taken for it
 * @param version of it
 * @param balances of the whole ledger before it is squared
 */
record FinishGround(Session session, String name, Plan plan, int version, Balances balances) {
  /**
   * With the plan as its yarn was taken for it.
   *
   * @param version of it; empty where nothing was ever taken, which its squaring will refuse
   */
  static FinishGround of(Session session, String name, Optional<PlanVersion> version, Balances balances) throws BadInput {
    Optional<PlanVersion> kept = version.or(() -> session.plans().newest(name));
    String text = kept.orElseThrow(() -> CheckPlan.noSuchPlan(name)).body();
    return new FinishGround(session, name, PlanFile.read(name, text), kept.get().number(), balances);
  }

  Squaring squaring(Actuals actuals) throws NotDone, BadInput {
    Map<String, Length> found = new HashMap<>();
    for (Leftover leftover : actuals.leftovers()) {
      found.put(leftover.skein(), found(leftover));
    }
    return new Squaring(name, skeins(found), found, actuals.thrums(), actuals.samples(), Answer.reckoned(name, this::warp));
  }

  private Length found(Leftover leftover) throws NotDone {
    Optional<Skein> skein = session.skeins().find(leftover.skein());
    if (skein.isEmpty()) {
      throw NotDone.because("There is no skein {0} in the ledger.", leftover.skein());
    }
    if (ExpectedYarn.isOnOrder(session, leftover.skein())) {
      throw NotDone.because("{0} is still on order; say that it arrived before it is measured.", leftover.skein());
    }
    return switch (leftover.left()) {
      case Leftover.Left.UsedUp _ -> Length.ZERO;
      case Leftover.Left.OfLength(Length length) -> length;
      case Leftover.Left.Weighed _, Leftover.Left.Counted _ -> Recount.found(session, skein.get(), LeftOn.measures(leftover.left()));
    };
  }

  /** What the plan has, and what else is said. */
  List<DrawnSkein> skeins(Map<String, Length> found) {
    Map<String, DrawnBalances> bySkein = new HashMap<>();
    balances.lengths().forEach((holding, length) -> bySkein.computeIfAbsent(holding.skein(), _ -> new DrawnBalances(name)).add(holding, length));
    List<DrawnSkein> skeins = new ArrayList<>();
    var samples = session.gristSamples().all();
    for (Skein skein : session.skeins().all()) {
      DrawnBalances has = bySkein.getOrDefault(skein.code(), new DrawnBalances(name));
      if (has.isOfThePlan() || found.containsKey(skein.code())) {
        skeins.add(has.skein(skein.withSample(Optional.ofNullable(samples.get(skein.yarn().yarn())))));
      }
    }
    return skeins;
  }

  private Map<YarnColour, Length> warp() {
    Map<YarnColour, Length> warp = new HashMap<>();
    Yardage.of(plan).needs().stream().filter(need -> need.role() == Need.Role.WARP).forEach(need -> warp.merge(need.yarn(), need.length(), Length::plus));
    return warp;
  }

  /** The balances of one skein, as the plan sees them. */
  private static final class DrawnBalances {
    private final String plan;
    private Length onLoom = Length.ZERO;
    private Length reserved = Length.ZERO;
    private Length free = Length.ZERO;
    private Length promised = Length.ZERO;

    DrawnBalances(String plan) {
      this.plan = plan;
    }

    void add(Holding holding, Length length) {
      switch (holding.place()) {
        case Place.Shelf _ -> free = length;
        case Place.Loom(String other) when other.equals(plan) -> onLoom = length;
        case Place.Reserved(String other) when other.equals(plan) -> reserved = length;
        case Place.Reserved _ -> promised = promised.plus(length);
        default -> {}
      }
    }

    boolean isOfThePlan() {
      return onLoom.isPositive() || reserved.isPositive();
    }

    DrawnSkein skein(Skein skein) {
      return new DrawnSkein(skein.code(), skein.yarn(), skein.knownGrist(), onLoom, reserved, free, promised);
    }
  }
}
