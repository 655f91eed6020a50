package hankbook.exchange;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Several skeins of one lot, typed as one: their codes are numbered on from the first, and where they differ in length, weight or turns, these are listed for all
 * of them, such as {@code 102 g, 99 g, 101 g}; a unit said once at the end counts for all of a list. Blanks alone
 * part nothing. What is said once is said of each.
 */
public final class LotRows {
  /** The columns in which each skein may have something of its own. */
  public static final List<String> EACH = List.of("length", "gross", "tare", "turns");

  /** The most skeins that come at once. */
  public static final int MOST = 500;

  /** A comma parts only before a space or after a unit, since elsewhere it may stand in a number. */
  private static final Pattern BETWEEN = Pattern.compile("\\s*;\\s*|\\s*,\\s+|(?<=\\p{L}),");
  /** Whether a blank parts them, or the thousands of one, cannot be told. */
  private static final Pattern BARE = Pattern.compile("\\d[\\s\\u00A0\\u202F]+[.,]?\\d");
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");
  private static final Pattern UNIT = Pattern.compile(".*?(\\s*\\p{L}+)");

  private LotRows() {}

  /**
   * The codes of skeins.
   *
   * @param first ends in a number where there are several
   * @param count from 1 to {@link #MOST}
   * @throws Unreadable if the first cannot be numbered on
   */
  public static List<String> codes(String first, int count) {
    if (count == 1) {
      return List.of(first.strip());
    }
    Matcher numbered = NUMBERED.matcher(first.strip());
    if (!numbered.matches()) {
      throw new Unreadable(first, "a code that ends in a number, such as S059, to number the others on from it");
    }
    String number = numbered.group(2);
    List<String> codes = new ArrayList<>();
    for (int more = 0; more < count; more++) {
      codes.add(numbered.group(1) + String.format("%0" + number.length() + "d", Long.parseLong(number) + more));
    }
    return codes;
  }

  /**
   * The row of each skein.
   *
   * @param texts what was typed, by column
   * @param count from 1 to {@link #MOST}
   * @return so many rows; where the texts cannot be shared out, none
   */
  public static Shared rows(Map<String, String> texts, int count) {
    List<CellFault> faults = new ArrayList<>();
    Map<String, List<String>> lists = new LinkedHashMap<>();
    texts.forEach((column, text) -> {
      try {
        lists.put(column, column.equals("code") && !text.isBlank() ? codes(text, count) : each(column, text, count));
      } catch (Unreadable unreadable) {
        faults.add(new CellFault(column, unreadable.found(), unreadable.wanted()));
      }
    });
    return new Shared(faults.isEmpty() ? shared(lists, count) : List.of(), faults);
  }

  /**
   * Texts shared out.
   *
   * @param rows of the skeins
   * @param faults why there are none
   */
  public record Shared(List<Map<String, String>> rows, List<CellFault> faults) {
    public Shared {
      rows = List.copyOf(rows);
      faults = List.copyOf(faults);
    }
  }

  private static List<Map<String, String>> shared(Map<String, List<String>> lists, int count) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<String, String> row = new HashMap<>();
      for (Map.Entry<String, List<String>> list : lists.entrySet()) {
        row.put(list.getKey(), list.getValue().size() == 1 ? list.getValue().getFirst() : list.getValue().get(i));
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<String> each(String column, String text, int count) {
    List<String> parts = EACH.contains(column) && count > 1 ? Arrays.stream(BETWEEN.split(text.strip(), -1)).map(String::strip).filter(part -> !part.isEmpty()).toList() : List.of();
    boolean bare = parts.stream().anyMatch(part -> BARE.matcher(part).find());
    if (parts.size() < 2 && !bare) {
      return List.of(text);
    }
    if (bare || (parts.size() != count)) {
      throw new Unreadable(text, "one for all of them, or a list with one for each");
    }
    Matcher unit = UNIT.matcher(parts.getLast());
    return unit.matches() ? parts.stream().map(part -> UNIT.matcher(part).matches() ? part : part + unit.group(1)).toList() : parts;
  }
}
