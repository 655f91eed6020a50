package hankbook.desktop;

import hankbook.allot.Fit;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.cost.CostWish;
import hankbook.exchange.BadInput;
import hankbook.gear.Gear;
import hankbook.plan.Plan;
import hankbook.plan.Variation;
import hankbook.reckon.Offer;
import hankbook.studio.Alternative;
import hankbook.studio.CheckPlan;
import hankbook.studio.ComparePlans;
import hankbook.studio.CopyPlan;
import hankbook.studio.CostPlan;
import hankbook.studio.CostedPlan;
import hankbook.studio.Draw;
import hankbook.studio.FinishList;
import hankbook.studio.FollowPlan;
import hankbook.studio.KeptPlan;
import hankbook.studio.Learnt;
import hankbook.studio.NotDone;
import hankbook.studio.PlanStep;
import hankbook.studio.OwnGear;
import hankbook.studio.Plans;
import hankbook.studio.Release;
import hankbook.studio.Reserve;
import hankbook.studio.Settings;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** The plans of an open ledger. */
public final class StudioPlanDesk implements PlanDesk {
  private final Studio studio;
  private final Plans plans;
  private final Shelf shelf;
  private final CheckPlan check;
  private final CostPlan cost;
  private final Reserve reserve;
  private final Release release;
  private final Draw draw;
  private final Learnt learnt;
  private final OwnGear gear;
  private final Settings settings;

  public StudioPlanDesk(Studio studio) {
    this.studio = studio;
    this.plans = new Plans(studio);
    this.shelf = new Shelf(studio);
    this.check = new CheckPlan(studio);
    this.cost = new CostPlan(studio);
    this.reserve = new Reserve(studio);
    this.release = new Release(studio);
    this.draw = new Draw(studio);
    this.learnt = new Learnt(studio);
    this.gear = new OwnGear(studio);
    this.settings = new Settings(studio);
  }

  @Override
  public List<String> names() {
    return plans.names();
  }

  @Override
  public Optional<KeptPlan> kept(String name) {
    return plans.kept(name);
  }

  @Override
  public int keep(String name, String text, int expected) throws NotDone {
    return plans.keep(name, text, expected);
  }

  @Override
  public void rename(String from, String to, String text) throws NotDone {
    plans.rename(from, to, text);
  }

  @Override
  public void putAway(String name) throws NotDone {
    plans.putAway(name);
  }

  @Override
  public List<PlanStep> steps(String name) {
    return new FollowPlan(studio).named(name);
  }

  @Override
  public String duplicate(String name) throws NotDone {
    return new CopyPlan(studio).duplicate(name, Optional.empty());
  }

  @Override
  public String vary(String name, Variation variation) throws BadInput, NotDone {
    return new CopyPlan(studio).vary(name, variation, Optional.empty());
  }

  @Override
  public ComparePlans.Compared compare(List<Alternative> wanted) {
    return new ComparePlans(studio).of(wanted);
  }

  @Override
  public List<ShelfSkein> skeins() {
    return shelf.skeins();
  }

  @Override
  public PlanCheck check(Plan plan) throws BadInput {
    return check.of(plan).check();
  }

  @Override
  public Fit fit(Plan plan) throws BadInput {
    return check.of(plan).fit();
  }

  @Override
  public WindingSheet winding(Plan plan, WindingWish wish) throws BadInput {
    return check.of(plan).winding(wish);
  }

  @Override
  public Set<String> squared() {
    return FinishList.of(studio).squared().stream().map(FinishList.Closed::plan).collect(Collectors.toSet());
  }

  @Override
  public CostedPlan cost(Plan plan) throws BadInput {
    return cost.of(plan, CostWish.AS_SET);
  }

  @Override
  public List<Offer> offers(Plan plan) throws BadInput {
    return learnt.offers(plan);
  }

  @Override
  public Gear gear() {
    return gear.all();
  }

  @Override
  public Judgement judgement() {
    return settings.judgement();
  }

  @Override
  public void reserve(UUID id, String name, int version, boolean evenIfShort) throws BadInput, NotDone {
    reserve.plan(id, name, version, evenIfShort);
  }

  @Override
  public void release(UUID id, String name) throws NotDone {
    release.plan(id, name);
  }

  @Override
  public void draw(UUID id, String name) throws NotDone {
    draw.plan(id, name);
  }
}
