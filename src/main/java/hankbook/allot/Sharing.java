package hankbook.allot;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Turns what the search settled into shares: hands out the weft, and says why each skein was taken. */
final class Sharing {
  private static final Comparator<Portion> EARLIEST = Comparator.comparing(Portion::skein, Allotting.EARLIEST);

  private final Task task;
  private final Aim aim;
  private final List<Portion> portions;

  Sharing(Task task, Aim aim, List<Portion> portions) {
    this.task = task;
    this.aim = aim;
    // The skein that sets the remnant aside gives last, so that it may keep more.
    this.portions = portions.stream().sorted(Comparator.comparing(Portion::keeps).thenComparing(EARLIEST)).toList();
  }

  Allotment allotment() {
    List<Portion> given = new ArrayList<>();
    long weft = task.weft();
    int ends = task.ends();
    for (Portion portion : portions) {
      long part = Math.min(weft, portion.weft());
      weft -= part;
      ends -= portion.ends();
      given.add(new Portion(portion.skein(), portion.ends(), part, portion.keeps()));
    }
    return new Allotment(given.stream().sorted(EARLIEST).map(this::share).toList(), ends, new Length(weft));
  }

  private Share share(Portion portion) {
    Length weft = new Length(portion.weft());
    return new Share(portion.skein().code(), portion.ends(), task.warp(portion.ends()), weft, reason(portion));
  }

  private String reason(Portion portion) {
    Candidate skein = portion.skein();
    Length left = skein.free().minus(task.warp(portion.ends())).minus(new Length(portion.weft()));
    String lot = skein.lot().isEmpty() ? "lot unknown" : skein.lotOrOwn();
    String opened = skein.opened() ? ", opened before" : ", unopened";
    String remnant = portion.keeps() ? ", keeps the longest remnant, " + left : "";
    return lot + opened + ", " + without(skein) + remnant;
  }

  /** What would happen without a skein, with no other put in its place: the search took none that could be spared. */
  private String without(Candidate skein) {
    List<Candidate> others = portions.stream().map(Portion::skein).filter(other -> !other.equals(skein)).toList();
    long more = new Sweep(task, Aim.NONE, others, Set.of()).leastUncovered() - aim.uncovered();
    return more > 0 ? "without it " + new Length(more) + " more would lack" : "without it more lots would be mixed or more skeins opened";
  }
}
