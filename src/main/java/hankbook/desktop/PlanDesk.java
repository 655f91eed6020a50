package hankbook.desktop;

import hankbook.allot.Fit;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.exchange.BadInput;
import hankbook.gear.Gear;
import hankbook.plan.Plan;
import hankbook.plan.Variation;
import hankbook.reckon.Offer;
import hankbook.studio.Alternative;
import hankbook.studio.ComparePlans;
import hankbook.studio.CostedPlan;
import hankbook.studio.KeptPlan;
import hankbook.studio.NotDone;
import hankbook.studio.PlanStep;
import hankbook.studio.ShelfSkein;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What the plans ask of the ledger. Every call may wait for it, so none is made from the screen's own thread. */
public interface PlanDesk {
  /** The name of every plan. */
  List<String> names();

  /** A plan as it was last kept. */
  Optional<KeptPlan> kept(String name);

  /** Keeps a plan's file text, even one that cannot be read as a plan yet, if the version expected is still the newest; gives the new version. */
  int keep(String name, String text, int expected) throws NotDone;

  /** Gives a plan another name; the text is the plan under its new one. */
  void rename(String from, String to, String text) throws NotDone;

  /** Takes a plan off the list. */
  void putAway(String name) throws NotDone;

  /** Makes a plan that says the same as another, under a free name, which it gives. */
  String duplicate(String name) throws NotDone;

  /** Makes a plan of a variant of another, under a free name, which it gives. */
  String vary(String name, Variation variation) throws BadInput, NotDone;

  /** Lays plans and variants side by side. */
  ComparePlans.Compared compare(List<Alternative> wanted);

  /** The names of the plans whose book is squared. */
  Set<String> squared();

  /** Every step in the life of a plan, those to come too. */
  List<PlanStep> steps(String name);

  /** Every skein there is. */
  List<ShelfSkein> skeins();

  /** Holds a plan against what is free for it. */
  PlanCheck check(Plan plan) throws BadInput;

  /** The most of a plan that what is free for it covers, and what would make one fit that is short. */
  Fit fit(Plan plan) throws BadInput;

  /** What to have beside the warping board for a plan. */
  WindingSheet winding(Plan plan, WindingWish wish) throws BadInput;

  /** What a plan costs, by what is set. */
  CostedPlan cost(Plan plan) throws BadInput;

  /** What finished plans propose for a plan. */
  List<Offer> offers(Plan plan) throws BadInput;

  /** The looms and reeds there are. */
  Gear gear();

  /** By what plans are judged. */
  Judgement judgement();

  /** Brings what is reserved for a version of a plan to what its allotment says. */
  void reserve(UUID id, String name, int version, boolean evenIfShort) throws BadInput, NotDone;

  /** Gives everything reserved for a plan back to the shelf. */
  void release(UUID id, String name) throws NotDone;

  /** Puts everything reserved for a plan onto the loom. */
  void draw(UUID id, String name) throws NotDone;
}
