package hankbook.studio.shelf;

/**
 * A part of a question that could not be understood; the rest is asked all the same.
 *
 * @param found as it was typed
 * @param wanted what would have been
 */
public record NotUnderstood(String found, Wanted wanted) {
  /** What would have been understood. */
  public enum Wanted {
    /** A length or a mass after a sign. */
    AMOUNT,
    /** The name of something that can be asked for before a colon. */
    FIELD
  }
}
