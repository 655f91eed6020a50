package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
  private static final Comparator<Candidate> LONGEST = Comparator.comparing(Candidate::free).reversed().thenComparing(Allotting.EARLIEST);

  /**
   * The lots of some skeins, those with skeins that must be touched first, then those with most. Kept are only as many skeins of a kind as may
   * be touched: whatever a skein is used for, a longer one of its lot that was no more opened could be used for as well.
   */
  static List<Lot> of(List<Candidate> skeins, Set<Candidate> must, Aim aim) {
    Map<String, List<Candidate>> byLot = new LinkedHashMap<>();
    skeins.forEach(skein -> byLot.computeIfAbsent(skein.lotOrOwn(), none -> new ArrayList<>()).add(skein));
    List<Lot> lots = new ArrayList<>();
    byLot.values().forEach(those -> lots.add(of(those, must, aim.unopened(), aim.touched())));
    lots.sort(Comparator.comparing((Lot lot) -> lot.must().isEmpty()).thenComparing(Lot::held, Comparator.reverseOrder()));
    return worthTrying(lots, aim.lots());
  }

  private static Lot of(List<Candidate> skeins, Set<Candidate> must, int unopened, int touched) {
    List<Candidate> free = skeins.stream().filter(skein -> !must.contains(skein)).sorted(LONGEST).toList();
    return new Lot(
        skeins.stream().filter(must::contains).toList(),
        free.stream().filter(Candidate::opened).limit(touched).toList(),
        free.stream().filter(skein -> !skein.opened()).limit(Math.min(unopened, touched)).toList(),
        skeins.size() == 1);
  }

  /** Of lots of one skein, no more than may be used: a shorter skein can always give way to a longer one. */
  private static List<Lot> worthTrying(List<Lot> lots, int most) {
    int[] seen = new int[2];
    return lots.stream().filter(lot -> !lot.alone() || !lot.must().isEmpty() || seen[lot.opened().isEmpty() ? 0 : 1]++ < most).toList();
  }

  private long held() {
    return length(must) + length(opened) + length(unopened);
  }

  private static long length(List<Candidate> skeins) {
    return skeins.stream().mapToLong(skein -> skein.free().tenthsOfMillimetre()).sum();
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
