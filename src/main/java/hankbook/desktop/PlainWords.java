package hankbook.desktop;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Search by plain words: every word must be found somewhere, in whatever case. */
final class PlainWords {
  private PlainWords() {}

  /** The text a thing is searched by. */
  static String of(String... fields) {
    return String.join("\n", fields).toLowerCase(Locale.ROOT);
  }

  /** Whether a searched text holds all the words asked for. */
  static Predicate<String> all(String asked) {
    List<String> words = Stream.of(asked.toLowerCase(Locale.ROOT).split("\\s+", -1)).filter(word -> !word.isEmpty()).toList();
    return searched -> words.stream().allMatch(searched::contains);
  }
}
