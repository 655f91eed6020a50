package hankbook.yarn;

import hankbook.measure.Unreadable;
import java.util.Comparator;

/**
 * A yarn in one of its colours, the thing that plans ask for and shelves hold.
 *
 * @param yarn the yarn's name, not blank
 * @param colour the colour's name, not blank
 */
public record YarnColour(String yarn, String colour) implements Comparable<YarnColour> {
  private static final Comparator<YarnColour> ORDER = Comparator.comparing(YarnColour::yarn).thenComparing(YarnColour::colour);

  public YarnColour {
    yarn = OneLine.of(yarn);
    colour = OneLine.of(colour);
    if (yarn.isEmpty()) {
      throw new Unreadable(yarn, "the yarn's name");
    }
    if (colour.isEmpty()) {
      throw new Unreadable(colour, "the colour's name");
    }
  }

  @Override
  public int compareTo(YarnColour other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return yarn + " " + colour;
  }
}
