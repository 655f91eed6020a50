package hankbook.plan;

import hankbook.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The picks of one weft in a whole cloth.
 *
 * @param weft the weft
 * @param picks how many, at least 0
 */
record WeftPicks(Weft weft, long picks) {
  /** The picks of each weft, those that share theirs together. */
  static List<WeftPicks> of(Making making) {
    List<List<Weft>> passages = WeftOrder.passages(making.plan().wefts());
    List<Long> each = counted(passages.stream().map(wefts -> picksIn(wefts.getFirst(), making)).toList(), making.counted());
    List<WeftPicks> all = new ArrayList<>();
    for (int i = 0; i < passages.size(); i++) {
      List<Weft> wefts = passages.get(i);
      List<Long> picks = WeftOrder.picks(making.plan().weftSuccession(), wefts, each.get(i));
      for (int j = 0; j < wefts.size(); j++) {
        all.add(new WeftPicks(wefts.get(j), picks.get(j)));
      }
    }
    return all;
  }

  /** The picks of the passage that a weft is in. */
  static long picksIn(Weft weft, Making making) {
    BigFraction cloth = weft.length().map(length -> length.exactTenths().multiply(making.ofCloth())).orElse(making.cloth());
    return Exact.roundedUp(weft.picks().threadsIn(cloth.add(making.sampled())));
  }

  private static List<Long> counted(List<Long> planned, OptionalLong counted) {
    long sum = planned.stream().mapToLong(Long::longValue).sum();
    if (counted.isEmpty() || sum == 0) {
      return planned;
    }
    return Apportionment.of(counted.getAsLong(), planned.stream().map(picks -> BigFraction.of(picks, sum)).toList(), "the weft");
  }
}
