package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The skeins of a dye lot.
 *
 * @param must those that must be touched
 * @param opened the others that were opened before, longest first
 * @param unopened the other others, longest first
 * @param alone whether the lot has one skein only
 */
record Lot(List<Candidate> must, List<Candidate> opened, List<Candidate> unopened, boolean alone) {
  /**
   * The lots of a shelf, those with skeins that must be touched first, then those with most. Kept are only as many skeins of a kind as may be
   * touched: whatever a skein is used for, a longer one of its lot that was no more opened could be used for as well.
   */
  static List<Lot> of(DyeLots shelf, Set<Candidate> must, Aim aim) {
    List<Lot> lots = new ArrayList<>();
    shelf.lots().forEach(lot -> lots.add(of(lot, must, aim.unopened(), aim.touched())));
    lots.sort(Comparator.comparing((Lot lot) -> lot.must().isEmpty()).thenComparing(Lot::held, Comparator.reverseOrder()));
    return worthTrying(lots, aim.lots());
  }

  private static Lot of(DyeLots.DyeLot lot, Set<Candidate> must, int unopened, int touched) {
    List<Candidate> touch = must.stream().filter(skein -> lot.opened().contains(skein) || lot.unopened().contains(skein)).toList();
    return new Lot(touch, others(lot.opened(), touch, touched), others(lot.unopened(), touch, Math.min(unopened, touched)), lot.alone());
  }

  private static List<Candidate> others(List<Candidate> skeins, List<Candidate> must, int most) {
    if (must.isEmpty()) {
      return skeins.subList(0, Math.min(most, skeins.size()));
    }
    return skeins.stream().filter(skein -> !must.contains(skein)).limit(most).toList();
  }

  /** Of lots of one skein, no more than may be used: a shorter skein can always give way to a longer one. */
  private static List<Lot> worthTrying(List<Lot> lots, int most) {
    int[] seen = new int[2];
    return lots.stream().filter(lot -> !lot.alone() || !lot.must().isEmpty() || seen[lot.opened().isEmpty() ? 0 : 1]++ < most).toList();
  }

  List<Candidate> all() {
    List<Candidate> all = new ArrayList<>(size());
    all.addAll(must);
    all.addAll(opened);
    all.addAll(unopened);
    return all;
  }

  int size() {
    return must.size() + opened.size() + unopened.size();
  }

  private long held() {
    long held = 0;
    for (Candidate skein : all()) {
      held += skein.free().tenthsOfMillimetre();
    }
    return held;
  }

  /** Whether whatever another lot is used for, this one could be used for. */
  boolean dominates(Lot other) {
    return other.must().isEmpty() && noShorter(opened, other.opened()) && noShorter(unopened, other.unopened());
  }

  private static boolean noShorter(List<Candidate> these, List<Candidate> those) {
    boolean longer = these.size() >= those.size();
    for (int i = 0; longer && i < those.size(); i++) {
      longer = these.get(i).free().compareTo(those.get(i).free()) >= 0;
    }
    return longer;
  }
}
