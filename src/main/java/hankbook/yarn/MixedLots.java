package hankbook.yarn;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;

/**
 * The name of a lot that yarn of several dye lots is wound into. It is the name of none of them, so that nobody takes such a skein for one of either lot, and it
 * says which they are.
 */
public final class MixedLots {
  private static final String WITH = " + ";
  private static final String UNKNOWN = "unknown";

  private MixedLots() {}

  /**
   * Both lots in one name, whichever comes first; a lot that is the other's gives just that.
   *
   * @param one a lot, mixed already or not; empty where it is not known
   * @param other the same
   */
  public static String together(String one, String other) {
    if (one.equals(other)) {
      return one;
    }
    Set<String> lots = new TreeSet<>();
    add(lots, one);
    add(lots, other);
    return String.join(WITH, lots);
  }

  private static void add(Set<String> lots, String lot) {
    Arrays.stream(lot.split(" \\+ ", -1)).map(part -> part.isBlank() ? UNKNOWN : part).forEach(lots::add);
  }
}
