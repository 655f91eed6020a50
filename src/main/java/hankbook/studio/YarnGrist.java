package hankbook.studio;

import hankbook.measure.YarnNumber;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;

/**
 * How heavy a yarn is for its length, and how that is known.
 *
 * @param yarn its name
 * @param numbers that its skeins bear, each once
 * @param sample that was weighed last; empty where the yarn number is all there is
 * @param toRecount skeins in the house that the ledger has with other metres than this grist makes of their weight, by code
 * @param unmeasured skeins in the house that were weighed when no grist was known and count as nothing, with this grist, which makes metres of
 *     their weight; by code
 */
public record YarnGrist(String yarn, List<YarnNumber> numbers, Optional<GristSample> sample, List<Skein> toRecount, List<Skein> unmeasured) {
  public YarnGrist {
    numbers = List.copyOf(numbers);
    toRecount = List.copyOf(toRecount);
    unmeasured = List.copyOf(unmeasured);
  }
}
