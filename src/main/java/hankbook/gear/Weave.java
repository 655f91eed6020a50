package hankbook.gear;

import hankbook.measure.Exact;
import hankbook.measure.Unreadable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A weave, as far as the sett needs it: one repeat of it along a pick.
 *
 * <p>Plain weave has 2 ends and 2 intersections. A twill has as many ends as the numbers of its name make and an intersection for each
 * of them; a satin has 2 (common practice with Ashenhurst's rule).
 *
 * @param name how it is written, such as {@code 2/2 twill}
 * @param ends in one repeat, at least 1
 * @param intersections how often a pick goes from face to back or back to face in one repeat, at least 1 and at most one to each end
 * @param shafts the fewest that weave it, where that is known
 */
public record Weave(String name, int ends, int intersections, OptionalInt shafts) {
  /** Plain weave. */
  public static final Weave PLAIN = new Weave("plain", 2, 2, OptionalInt.of(2));

  private static final Pattern TWILL = Pattern.compile("(\\d{1,2}(?:/\\d{1,2})+) twill");
  private static final Pattern SATIN = Pattern.compile("(\\d{1,2})(?:-| )end sat(?:in|een)");
  private static final Pattern COUNTED = Pattern.compile("(\\d{1,3}) ends?,? (\\d{1,3}) intersections?(?:,? (\\d{1,2}) shafts?)?");
  private static final int FEWEST_OF_A_SATIN = 5;
  private static final String WANTED = "a weave such as plain, 2/2 twill, 5-end satin, or 4 ends, 2 intersections";

  public Weave {
    if (ends < 1 || intersections < 1 || intersections > ends) {
      throw new Unreadable(name, "a repeat with at least 1 intersection and no more of them than ends");
    }
    if (shafts.isPresent() && shafts.getAsInt() < 1) {
      throw new Unreadable(Integer.toString(shafts.getAsInt()), "shafts of at least 1");
    }
  }

  /**
   * Reads {@code plain}, {@code 2/2 twill}, {@code 3/1/1/3 twill}, {@code 5-end satin} or {@code 4 ends, 2 intersections}, which may end
   * in {@code , 6 shafts}.
   *
   * @throws Unreadable if it is none of these
   */
  public static Weave parse(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (words.equals("plain") || words.equals("plain weave") || words.equals("tabby")) {
      return PLAIN;
    }
    Matcher twill = TWILL.matcher(words);
    if (twill.matches()) {
      return twill(text, twill.group(1));
    }
    Matcher satin = SATIN.matcher(words);
    if (satin.matches() && Integer.parseInt(satin.group(1)) >= FEWEST_OF_A_SATIN) {
      int ends = Integer.parseInt(satin.group(1));
      return new Weave(ends + "-end satin", ends, 2, OptionalInt.of(ends));
    }
    Matcher counted = COUNTED.matcher(words);
    if (counted.matches()) {
      return counted(counted.group(1), counted.group(2), counted.group(3) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(counted.group(3))));
    }
    throw new Unreadable(text, WANTED);
  }

  private static Weave twill(String text, String numbers) {
    List<Integer> floats = Arrays.stream(numbers.split("/")).map(Integer::valueOf).toList();
    int ends = floats.stream().mapToInt(Integer::intValue).sum();
    if (floats.contains(0) || floats.size() % 2 != 0 || ends <= 2) {
      throw new Unreadable(text, WANTED);
    }
    return new Weave(numbers + " twill", ends, floats.size(), OptionalInt.of(ends));
  }

  private static Weave counted(String ends, String intersections, OptionalInt shafts) {
    String on = shafts.isPresent() ? ", " + shafts.getAsInt() + " shafts" : "";
    return new Weave(ends + " ends, " + intersections + " intersections" + on, Integer.parseInt(ends), Integer.parseInt(intersections), shafts);
  }

  /** The part of the yarn's diameters that ends may take: E / (E + I), since each intersection takes the room of a thread. */
  public BigFraction fullness() {
    return BigFraction.of(ends, ends + intersections);
  }

  /** How the fullness comes about: {@code 4/(4 + 2) = 0.667}. */
  public String explained() {
    return ends + "/(" + ends + " + " + intersections + ") = " + Exact.plain(fullness(), 3);
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    return name;
  }
}
