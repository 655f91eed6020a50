package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The skeins that could serve, put in order once.
 *
 * @param skeins all of them, earliest received first
 * @param lots their dye lots
 * @param alone those that are the only ones of their lot
 */
record DyeLots(List<Candidate> skeins, List<DyeLot> lots, Set<Candidate> alone) {
  private static final Comparator<Candidate> LONGEST = Comparator.comparing(Candidate::free).reversed().thenComparing(Allotting.EARLIEST);

  /**
   * The skeins of one dye lot.
   *
   * @param name of the lot, or of the skein whose lot is unknown
   * @param opened those opened before, longest first
   * @param unopened the others, longest first
   */
  record DyeLot(String name, List<Candidate> opened, List<Candidate> unopened) {
    /** Whether the lot has one skein only. */
    boolean alone() {
      return opened.size() + unopened.size() == 1;
    }
  }

  static DyeLots of(List<Candidate> skeins) {
    Map<String, List<Candidate>> byLot = new LinkedHashMap<>();
    List<Candidate> earliestFirst = skeins.stream().sorted(Allotting.EARLIEST).toList();
    earliestFirst.forEach(skein -> byLot.computeIfAbsent(skein.lotOrOwn(), none -> new ArrayList<>()).add(skein));
    List<DyeLot> lots = new ArrayList<>();
    byLot.forEach((name, those) -> lots.add(new DyeLot(name, longest(those, true), longest(those, false))));
    Set<Candidate> alone = lots.stream().filter(DyeLot::alone).flatMap(lot -> Stream.concat(lot.opened().stream(), lot.unopened().stream())).collect(Collectors.toSet());
    return new DyeLots(earliestFirst, List.copyOf(lots), alone);
  }

  private static List<Candidate> longest(List<Candidate> skeins, boolean opened) {
    return skeins.stream().filter(skein -> skein.opened() == opened).sorted(LONGEST).toList();
  }

  DyeLots without(Candidate skein) {
    return of(skeins.stream().filter(other -> !other.code().equals(skein.code())).toList());
  }

  /** All that they hold, in tenths of a millimetre. */
  long free() {
    return skeins.stream().mapToLong(skein -> skein.free().tenthsOfMillimetre()).sum();
  }

  int size() {
    return skeins.size();
  }
}
