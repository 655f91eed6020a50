package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Shares a whole number out into whole numbers by largest remainder; of equal remainders the first listed is served first. */
public final class Apportionment {
  private static final BigFraction TOLERANCE = Exact.of(new BigDecimal("1e-9"));

  private Apportionment() {}

  /**
   * The parts, in the order of the shares.
   *
   * @param whose shares they are, for a refusal
   * @throws Unreadable if the shares do not sum to 1, to within 1e-9
   */
  public static List<Long> of(long whole, List<BigFraction> shares, String whose) {
    BigFraction sum = shares.stream().reduce(BigFraction.ZERO, BigFraction::add);
    if (sum.subtract(BigFraction.ONE).abs().compareTo(TOLERANCE) > 0) {
      throw new Unreadable(Exact.plain(sum, 9), Phrase.of("shares of {0} that sum to 1", whose));
    }
    List<BigFraction> exact = shares.stream().map(share -> share.multiply(whole)).toList();
    List<Long> floors = exact.stream().map(part -> Exact.whole(part, RoundingMode.FLOOR)).toList();
    long left = whole - floors.stream().mapToLong(Long::longValue).sum();
    List<Integer> byRemainder =
        IntStream.range(0, shares.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> exact.get(i).subtract(floors.get(i))).reversed())
            .toList();
    List<Long> parts = new ArrayList<>(floors);
    for (int i = 0; i < left; i++) {
      int served = byRemainder.get(i % byRemainder.size());
      parts.set(served, parts.get(served) + 1);
    }
    return parts;
  }
}
