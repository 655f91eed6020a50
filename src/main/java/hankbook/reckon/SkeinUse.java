package hankbook.reckon;

import hankbook.measure.Length;

/**
 * What became of one skein of a plan; all lengths at least zero.
 *
 * @param skein as the book had it
 * @param drawnMore what was taken off it beyond what was drawn
 * @param returned to the shelf from the loom
 * @param recounted that the book did not know of
 * @param sampled used up in samples
 * @param thrums loom waste and trimmings
 */
public record SkeinUse(DrawnSkein skein, Length drawnMore, Length returned, Length recounted, Length sampled, Length thrums) {
  /**
   * By what was found on it, which is set against what never left the shelf: what is more than that comes back from the loom, what is less went there.
   *
   * @param found all that is still wound on it
   */
  public static SkeinUse of(DrawnSkein skein, Length found) {
    Length back = found.minus(skein.neverLeft());
    Length returned = Length.max(Length.ZERO, Length.min(back, skein.onLoom()));
    Length more = Length.max(back.negated(), Length.ZERO);
    return new SkeinUse(skein, more, returned, Length.max(back.minus(skein.onLoom()), Length.ZERO), Length.ZERO, Length.ZERO);
  }

  /** Nothing of it was used. */
  static SkeinUse untouched(DrawnSkein skein) {
    return new SkeinUse(skein, Length.ZERO, skein.onLoom(), Length.ZERO, Length.ZERO, Length.ZERO);
  }

  /** All that left it and did not come back. */
  public Length used() {
    return skein.onLoom().plus(drawnMore).minus(returned);
  }

  /** What is woven, or cannot be told from it. */
  public Length woven() {
    return used().minus(sampled).minus(thrums);
  }

  SkeinUse withSampled(Length length) {
    return new SkeinUse(skein, drawnMore, returned, recounted, length, thrums);
  }

  SkeinUse withThrums(Length length) {
    return new SkeinUse(skein, drawnMore, returned, recounted, sampled, length);
  }
}
