package hankbook.cost;

/**
 * Something that a plan takes and whose cost is in no sum.
 *
 * @param kind of thing
 * @param what it is
 * @param why its cost is not counted
 */
public record Uncounted(Kind kind, String what, String why) {
  /** What sort of cost it would be. */
  public enum Kind {
    YARN,
    WORK,
    OVERHEADS
  }

  /** Of yarn. */
  public Uncounted(String what, String why) {
    this(Kind.YARN, what, why);
  }

  @Override
  public String toString() {
    return what + ": " + why;
  }
}
