package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Counts out the picks of a cloth over the wefts that share them. */
public final class WeftOrder {
  private WeftOrder() {}

  /** The wefts of a plan, those that share their picks together, in the plan's order. */
  static List<List<Weft>> passages(List<Weft> wefts) {
    Map<Weft.Passage, List<Weft>> passages = new LinkedHashMap<>();
    wefts.forEach(weft -> passages.computeIfAbsent(weft.passage(), none -> new ArrayList<>()).add(weft));
    return List.copyOf(passages.values());
  }

  /**
   * The picks of each weft of a passage: those of the written order, repeated along the cloth, where the passage is in it, else by shares.
   *
   * @param picks of the whole passage
   * @throws Unreadable if shares do not sum to 1
   */
  static List<Long> picks(Optional<Succession> written, List<Weft> passage, long picks) {
    if (written.isPresent() && written.get().marks().contains(passage.getFirst().mark())) {
      Map<String, Long> counts = written.get().countsOver(picks);
      return passage.stream().map(weft -> counts.getOrDefault(weft.mark(), 0L)).toList();
    }
    return Apportionment.of(picks, passage.stream().map(Weft::share).toList(), "the weft of " + passage.getFirst().picks());
  }

  /**
   * Checks that the written order is of one passage, and of all its wefts.
   *
   * @throws Unreadable naming what is not so
   */
  public static void checkWritten(Succession written, List<Weft> wefts) {
    Marked.check(written, wefts);
    Set<String> marks = written.marks();
    List<List<Weft>> passages =
        passages(wefts).stream().filter(passage -> passage.stream().anyMatch(weft -> marks.contains(weft.mark()))).toList();
    if (passages.size() > 1) {
      String others = passages.get(0).getFirst().mark() + " and " + passages.get(1).getFirst().mark();
      throw new Unreadable(others, "wefts of the same picks, width and length in the written order");
    }
    passages.getFirst().forEach(weft -> Marked.checkUsed(marks, weft));
  }
}
