package hankbook.studio;

import java.time.LocalDate;

/**
 * How much of the yarn on order a check counts as though it had come.
 *
 * @param last what is expected until this day, that day too
 */
public record ExpectedBy(LocalDate last) {
  /** Only what is in the house. */
  public static final ExpectedBy NOTHING = new ExpectedBy(LocalDate.MIN);

  /** All that is on order. */
  public static final ExpectedBy ANY_DAY = new ExpectedBy(LocalDate.MAX);

  /** Whether a skein counts. */
  boolean counts(ExpectedSkein skein) {
    return !skein.due().isAfter(last);
  }
}
