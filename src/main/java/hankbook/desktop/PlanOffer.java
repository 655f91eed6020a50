package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.gear.Gear;
import hankbook.gear.Loom;
import hankbook.measure.LengthUnit;
import hankbook.plan.Plan;
import hankbook.reckon.Learnable;
import hankbook.reckon.Offer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is proposed for one allowance of the open plan.
 *
 * @param id by which its row is found
 * @param field the allowance
 * @param text what using it enters
 * @param words what it is and where it comes from
 * @param already what is said in its place where the plan says so already
 * @param saidAs the field's text in which the plan says so; empty where it does not
 */
record PlanOffer(String id, PlanField field, String text, String words, String already, Optional<String> saidAs) {
  /** What a loom that was never measured is made with. */
  static final String OF_THE_LOOM = "ofTheLoom";

  /** What finished plans propose, and the waste of the plan's own loom where nothing was learnt of that. */
  static List<PlanOffer> of(List<Offer> learnt, Plan plan, PlanDraft draft, Gear gear) {
    List<PlanOffer> offers = new ArrayList<>();
    learnt.stream().filter(offer -> offer.which().work().isEmpty()).forEach(offer -> offers.add(of(offer, plan, draft)));
    if (learnt.stream().noneMatch(offer -> offer.which() == Learnable.LOOM_WASTE && offer.finding().group().loom().isPresent())) {
      plan.dressing().loom().flatMap(gear::loom).filter(loom -> loom.waste().isPositive()).ifPresent(loom -> offers.add(of(loom, plan, draft)));
    }
    return List.copyOf(offers);
  }

  private static PlanOffer of(Offer offer, Plan plan, PlanDraft draft) {
    PlanField field = PlanField.of(PlanPart.ALLOWANCES, offer.which().key());
    BigFraction told = offer.which().unit().told(offer.value());
    boolean said = offer.said(plan.allowances()).filter(now -> offer.which().unit().told(now).equals(told)).isPresent();
    return new PlanOffer(offer.which().key(), field, offer.text(), Say.text("learnt {0}", Wording.phrase(offer.words())), Say.text("as learnt"), said ? Optional.of(draft.text(field).strip()) : Optional.empty());
  }

  private static PlanOffer of(Loom loom, Plan plan, PlanDraft draft) {
    PlanField field = PlanField.of(PlanPart.ALLOWANCES, Learnable.LOOM_WASTE.key());
    boolean said = plan.allowances().loomWaste().equals(loom.waste());
    String text = loom.waste().print(LengthUnit.CENTIMETRE, 2);
    return new PlanOffer(OF_THE_LOOM, field, text, Say.text("{0}, as {1} has it", text, loom.name()), Say.text("as the loom"), said ? Optional.of(draft.text(field).strip()) : Optional.empty());
  }

  /** Whether the plan says so already. */
  boolean isSaid(PlanDraft draft) {
    String now = draft.text(field).strip();
    return now.equals(text) || saidAs.filter(now::equals).isPresent();
  }

  /** What it is for. */
  String caption() {
    return PlanWords.caption(field.part(), field.key());
  }

  /** In a few words, without where it comes from. */
  String brief() {
    return Say.text("{0}: {1}", caption(), text);
  }

  /** What using it does, in words. */
  String act() {
    return Say.text("Use {0} for {1}", text, PlanWords.inside(caption()));
  }
}
