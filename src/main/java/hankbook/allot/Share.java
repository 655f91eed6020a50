package hankbook.allot;

import hankbook.measure.Length;
import java.util.List;

/**
 * What one skein gives.
 *
 * @param code the skein
 * @param kinds whole ends, by their kind
 * @param weft metres of weft
 * @param reason why this skein
 */
public record Share(String code, List<EndsGiven> kinds, Length weft, String reason) {
  public Share {
    kinds = List.copyOf(kinds);
  }

  /** Whole ends of every kind. */
  public int ends() {
    return kinds.stream().mapToInt(EndsGiven::ends).sum();
  }

  /** Whole ends of one kind. */
  public int ends(int kind) {
    return kinds.stream().filter(given -> given.kind() == kind).mapToInt(EndsGiven::ends).sum();
  }

  /** The yarn in the ends. */
  public Length warp() {
    return kinds.stream().map(EndsGiven::length).reduce(Length.ZERO, Length::plus);
  }
}
