package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.time.LocalDate;

/**
 * A skein that could serve.
 *
 * @param code its mark
 * @param lot dye lot; empty where unknown, which counts as a lot of its own
 * @param opened whether yarn was taken from it before
 * @param free what may be taken from it, at least zero
 * @param received when it came; {@link LocalDate#MAX} where unknown
 */
public record Candidate(String code, String lot, boolean opened, Length free, LocalDate received) {
  public Candidate {
    if (free.isNegative()) {
      throw new Unreadable(free.toString(), "a free length of at least zero");
    }
  }

  /** The lot, or the skein itself where that is unknown. */
  String lotOrOwn() {
    return lot.isEmpty() ? "skein " + code : "lot " + lot;
  }
}
