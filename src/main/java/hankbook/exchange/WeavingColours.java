package hankbook.exchange;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The colours of a weaving file by their numbers. */
final class WeavingColours {
  static final String PALETTE = "color palette";
  static final String TABLE = "color table";
  private static final int MOST = 100_000;
  private static final int GREATEST = 999_999_999;
  private static final String NUMBER = "the number of a colour,";
  private static final String WANTED_PARTS = "red, green and blue such as 47,93,138";

  private final Map<Integer, WeaveColour> colours = new HashMap<>();
  private Range range = new Range(0, 255, true);

  /**
   * The values a part of a colour may take.
   *
   * @param said whether the file says so itself
   */
  record Range(int least, int most, boolean said) {
    /** A part of a colour from 0 to 255, rounded half up. */
    int of255(int value) {
      long span = (long) most - least;
      return (int) ((2L * 255 * (value - least) + span) / (2 * span));
    }
  }

  private record Parts(WeavingLine line, List<Integer> numbers) {}

  static WeavingColours of(WeavingSections sections, WeavingFaults faults) {
    WeavingColours read = new WeavingColours();
    sections.line(PALETTE, "form").ifPresent(line -> faults.read(line, WeavingColours::rgb));
    Optional<Range> said = sections.line(PALETTE, "range").flatMap(line -> faults.read(line, WeavingColours::range));
    Map<Integer, Parts> table = new TreeMap<>();
    for (WeavingLine line : sections.lines(TABLE)) {
      Optional<List<Integer>> numbers = faults.read(line, text -> parts(text, said));
      Optional<Integer> key = faults.readKey(line, text -> WeavingNumber.whole(text, 0, MOST, NUMBER));
      key.ifPresent(number -> numbers.ifPresent(parts -> table.put(number, new Parts(line, parts))));
    }
    read.range = said.orElseGet(() -> likely(table.values()));
    read.fill(table);
    return read;
  }

  boolean isEmpty() {
    return colours.isEmpty();
  }

  /** The range, where the file leaves it out. */
  Optional<Range> guessedRange() {
    return range.said() ? Optional.empty() : Optional.of(range);
  }

  /**
   * The colour that a value names: a number, which its red, green and blue may follow.
   *
   * @throws Unreadable if there is none of that number
   */
  WeaveColour named(String text) {
    int number = WeavingNumber.whole(text.split(",", 2)[0].strip(), 0, MOST, NUMBER);
    WeaveColour colour = colours.get(number);
    if (colour == null && number > 0 && !colours.isEmpty()) {
      throw new Unreadable(text, Phrase.of("the number of a colour in {0}", WeavingFaults.heading(TABLE)));
    }
    return colour != null ? colour : new WeaveColour(number, "");
  }

  private static String rgb(String text) {
    if (!text.equalsIgnoreCase("RGB")) {
      throw new Unreadable(text, "RGB");
    }
    return text;
  }

  private static Range range(String text) {
    List<Integer> ends = WeavingNumber.list(text, 0, GREATEST, "the least and the greatest value of a colour");
    if (ends.size() != 2 || ends.get(0) >= ends.get(1)) {
      throw new Unreadable(text, "the least and the greatest value of a colour, such as 0,255");
    }
    return new Range(ends.get(0), ends.get(1), true);
  }

  private static List<Integer> parts(String text, Optional<Range> range) {
    List<Integer> parts =
        WeavingNumber.list(text, range.map(Range::least).orElse(0), range.map(Range::most).orElse(65_535), "red, green or blue");
    if (parts.size() != 3) {
      throw new Unreadable(text, WANTED_PARTS);
    }
    return parts;
  }

  /** Where a file leaves its range out, the smallest of those in use that holds every value. */
  private static Range likely(Collection<Parts> table) {
    int greatest = table.stream().flatMap(parts -> parts.numbers().stream()).mapToInt(Integer::intValue).max().orElse(0);
    return new Range(0, greatest <= 255 ? 255 : greatest <= 999 ? 999 : 65_535, false);
  }

  private void fill(Map<Integer, Parts> table) {
    Map<String, WeaveColour> byHex = new HashMap<>();
    table.forEach((number, parts) -> {
      List<Integer> rgb = parts.numbers();
      String hex = "#%02x%02x%02x".formatted(range.of255(rgb.get(0)), range.of255(rgb.get(1)), range.of255(rgb.get(2)));
      colours.put(number, byHex.computeIfAbsent(hex, text -> new WeaveColour(number, text)));
    });
  }
}
