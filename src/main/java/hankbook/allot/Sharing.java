package hankbook.allot;

import hankbook.measure.Length;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Turns what the search settled into shares: hands out the weft, and says why each skein was taken. */
final class Sharing {
  private final Task task;
  private final Effort effort;

  Sharing(Task task, Effort effort) {
    this.task = task;
    this.effort = effort;
  }

  /** Where no skein gives anything. */
  Allotment nothing() {
    return allotment(List.of(), task.weft());
  }

  Allotment of(Choice choice, Reasons reasons) {
    // The skein that sets the remnant aside gives last, so that it may keep more.
    List<Portion> portions = choice.portions().stream().sorted(Comparator.comparing(portion -> portion.slot().setAside() > 0)).toList();
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

  private Share share(Portion portion, Length weft, Reasons reasons) {
    List<EndsGiven> ends =
        IntStream.range(0, task.kinds())
            .filter(kind -> portion.ends().get(kind) > 0)
            .mapToObj(kind -> new EndsGiven(kind, portion.ends().get(kind), task.perEnd(kind)))
            .toList();
    return new Share(portion.slot().skein().code(), ends, weft, reasons.of(portion.slot()));
  }

  private Allotment allotment(List<Share> shares, long weftUncovered) {
    int wanted = IntStream.range(0, task.kinds()).map(task::ends).sum();
    int given = shares.stream().mapToInt(Share::ends).sum();
    return new Allotment(shares, wanted - given, new Length(weftUncovered), effort.proven());
  }
}
