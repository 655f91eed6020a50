package hankbook.desktop.find;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Which things answer to what was typed, and in which order: what is called just so, what begins so, what has words in its title that begin so, what has
 * such words anywhere, what holds the letters anywhere. Equals stand by how lately they were touched, then by title.
 */
public final class Ranking {
  private static final int NONE = 9;

  private Ranking() {}

  private record Ranked(Thing thing, int rank) {}

  /**
   * The best of each sort, the sort with the best first; sorts stay together.
   *
   * @param mostOfASort how many of one sort at most
   */
  public static List<Thing> best(List<Thing> things, String asked, int mostOfASort) {
    String wanted = small(asked.strip());
    List<String> words = List.of(wanted.split("\\s+"));
    Comparator<Ranked> order = Comparator.comparingInt(Ranked::rank)
        .thenComparing(Comparator.comparingLong((Ranked ranked) -> ranked.thing().recency()).reversed())
        .thenComparing(ranked -> ranked.thing().title(), String.CASE_INSENSITIVE_ORDER)
        .thenComparing(ranked -> ranked.thing().title());
    List<Thing> ranked = things.stream()
        .map(thing -> new Ranked(thing, rank(thing, wanted, words)))
        .filter(found -> found.rank() < NONE)
        .sorted(order)
        .map(Ranked::thing)
        .toList();
    return together(ranked, mostOfASort);
  }

  private static List<Thing> together(List<Thing> ranked, int most) {
    Map<Sort, Integer> first = new EnumMap<>(Sort.class);
    ranked.forEach(thing -> first.putIfAbsent(thing.sort(), first.size()));
    return first.keySet().stream()
        .sorted(Comparator.comparingInt(first::get))
        .flatMap(sort -> ranked.stream().filter(thing -> thing.sort() == sort).limit(most))
        .toList();
  }

  private static int rank(Thing thing, String wanted, List<String> words) {
    String title = small(thing.title());
    String all = small(thing.title() + " " + thing.detail() + " " + thing.more());
    if (title.equals(wanted)) {
      return 0;
    }
    if (title.startsWith(wanted)) {
      return 1;
    }
    if (words.stream().allMatch(word -> begins(title, word))) {
      return 2;
    }
    if (words.stream().allMatch(word -> begins(all, word))) {
      return 3;
    }
    return words.stream().allMatch(all::contains) ? 4 : NONE;
  }

  private static boolean begins(String text, String word) {
    return words(text).anyMatch(one -> one.startsWith(word));
  }

  private static Stream<String> words(String text) {
    return Arrays.stream(text.split("[\\s,;:()/]+", -1));
  }

  private static String small(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
