package hankbook.allot;

import hankbook.measure.Length;
import java.util.List;

/**
 * Which skeins serve.
 *
 * @param shares what each gives
 * @param endsUncovered whole ends that no skein gives
 * @param weftUncovered metres of weft that no skein gives
 * @param proven whether it is proven that no choice is better; false only where the search was given up for its size
 */
public record Allotment(List<Share> shares, int endsUncovered, Length weftUncovered, boolean proven) {
  public Allotment {
    shares = List.copyOf(shares);
  }

  /** Whether nothing is left uncovered. */
  public boolean complete() {
    return endsUncovered == 0 && weftUncovered.isZero();
  }
}
