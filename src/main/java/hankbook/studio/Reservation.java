package hankbook.studio;

import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is to be moved so that a plan has what its check says, and no more.
 *
 * @param lacking from the shelf to the plan
 * @param unwanted from the plan back to the shelf
 * @param isNothingAtAll whether the plan neither has anything nor gets anything
 */
record Reservation(List<Transfer> lacking, List<Transfer> unwanted, boolean isNothingAtAll) {
  static Reservation of(PlanCheck check, List<ShelfSkein> skeins) {
    String plan = check.plan().name();
    Map<String, Length> wanted = wanted(check, skeins);
    List<Transfer> lacking = new ArrayList<>();
    List<Transfer> unwanted = new ArrayList<>();
    boolean has = false;
    for (ShelfSkein held : skeins) {
      String code = held.skein().code();
      Length reserved = held.reserved().getOrDefault(plan, Length.ZERO);
      has |= reserved.isPositive() || onLoom(held, plan).isPositive();
      Length lacks = wanted.getOrDefault(code, Length.ZERO).minus(reserved);
      if (lacks.isPositive()) {
        lacking.add(new Transfer(code, new Place.Shelf(), new Place.Reserved(plan), lacks));
      } else if (lacks.isNegative()) {
        unwanted.add(new Transfer(code, new Place.Reserved(plan), new Place.Shelf(), lacks.negated()));
      }
    }
    return new Reservation(lacking, unwanted, !has && lacking.isEmpty());
  }

  /** What of each skein is to be reserved, beside what is on the loom. */
  private static Map<String, Length> wanted(PlanCheck check, List<ShelfSkein> skeins) {
    Map<String, Length> wanted = new HashMap<>();
    for (Share share : check.shares()) {
      wanted.merge(share.code(), share.warp().plus(share.weft()), Length::plus);
    }
    Map<YarnColour, Length> woundBeyond = new HashMap<>();
    for (ShelfSkein held : skeins) {
      Length left = wanted.getOrDefault(held.skein().code(), Length.ZERO).minus(onLoom(held, check.plan().name()));
      wanted.put(held.skein().code(), Length.max(left, Length.ZERO));
      woundBeyond.merge(held.skein().yarn(), Length.max(left.negated(), Length.ZERO), Length::plus);
    }
    for (ShelfSkein held : skeins) {
      Length wants = wanted.getOrDefault(held.skein().code(), Length.ZERO);
      Length served = Length.min(wants, woundBeyond.getOrDefault(held.skein().yarn(), Length.ZERO));
      wanted.put(held.skein().code(), wants.minus(served));
      woundBeyond.merge(held.skein().yarn(), served.negated(), Length::plus);
    }
    return wanted;
  }

  private static Length onLoom(ShelfSkein held, String plan) {
    return held.onLoom().getOrDefault(plan, Length.ZERO);
  }
}
