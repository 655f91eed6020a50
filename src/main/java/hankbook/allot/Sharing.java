package hankbook.allot;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Turns what the search settled into shares: hands out the weft, and says why each skein was taken. */
final class Sharing {
  private final Task task;
  private final boolean proven;

  Sharing(Task task, boolean proven) {
    this.task = task;
    this.proven = proven;
  }

  /** Where no skein gives anything. */
  Allotment nothing() {
    return allotment(List.of(), task.weft());
  }

  Allotment of(List<Portion> given, Function<Slot, String> reasons) {
    // The skein that sets the remnant aside gives last, so that it may keep more.
    List<Portion> portions = usedUpInTurn(given).stream().sorted(Comparator.comparing(portion -> portion.slot().setAside() > 0)).toList();
    long[] left = new long[portions.size() + 1];
    left[0] = task.weft();
    for (int i = 0; i < portions.size(); i++) {
      left[i + 1] = Math.max(0, left[i] - portions.get(i).weft());
    }
    List<Share> shares =
        IntStream.range(0, portions.size())
            .boxed()
            .sorted(Comparator.comparing(i -> portions.get(i).slot().skein(), Allotting.EARLIEST))
            .map(i -> share(portions.get(i), new Length(left[i] - left[i + 1]), reasons))
            .filter(share -> share.ends() > 0 || share.weft().isPositive())
            .toList();
    return allotment(shares, left[portions.size()]);
  }

  /** Of skeins alike but for their age, the last received keeps what is set aside, so that the earlier ones are used up. */
  private static List<Portion> usedUpInTurn(List<Portion> portions) {
    Map<List<Object>, List<Portion>> alike = new LinkedHashMap<>();
    for (Portion portion : portions) {
      Candidate skein = portion.slot().skein();
      alike.computeIfAbsent(List.of(skein.lotOrOwn(), skein.opened(), skein.free()), none -> new ArrayList<>()).add(portion);
    }
    List<Portion> inTurn = new ArrayList<>();
    for (List<Portion> those : alike.values()) {
      those.sort(Comparator.comparingLong((Portion portion) -> portion.slot().setAside()).thenComparing(portion -> portion.slot().skein(), Allotting.EARLIEST));
      List<Candidate> skeins = those.stream().map(portion -> portion.slot().skein()).sorted(Allotting.EARLIEST).toList();
      for (int i = 0; i < those.size(); i++) {
        Slot slot = those.get(i).slot();
        inTurn.add(new Portion(new Slot(skeins.get(i), slot.role(), slot.setAside()), those.get(i).ends(), those.get(i).weft()));
      }
    }
    return inTurn;
  }

  private Share share(Portion portion, Length weft, Function<Slot, String> reasons) {
    List<EndsGiven> ends =
        IntStream.range(0, task.kinds())
            .filter(kind -> portion.ends().get(kind) > 0)
            .mapToObj(kind -> new EndsGiven(kind, portion.ends().get(kind), task.perEnd(kind)))
            .toList();
    return new Share(portion.slot().skein().code(), ends, weft, reasons.apply(portion.slot()));
  }

  private Allotment allotment(List<Share> shares, long weftUncovered) {
    int wanted = IntStream.range(0, task.kinds()).map(task::ends).sum();
    int given = shares.stream().mapToInt(Share::ends).sum();
    return new Allotment(shares, wanted - given, new Length(weftUncovered), proven);
  }
}
