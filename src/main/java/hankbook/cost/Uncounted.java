package hankbook.cost;

/**
 * Something that a plan takes and whose cost is in no sum.
 *
 * @param what it is
 * @param why its cost is not counted
 */
public record Uncounted(String what, String why) {
  @Override
  public String toString() {
    return what + ": " + why;
  }
}
