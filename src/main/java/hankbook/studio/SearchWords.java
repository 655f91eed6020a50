package hankbook.studio;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Words to search the journal by: each must begin its number or its date, or stand anywhere in the rest. */
record SearchWords(List<String> words) {
  SearchWords {
    words = List.copyOf(words);
  }

  static SearchWords of(String asked) {
    return new SearchWords(Stream.of(asked.toLowerCase(Locale.ROOT).split("\\s+", -1)).filter(word -> !word.isEmpty()).toList());
  }

  boolean standIn(EntryText entry) {
    return words.stream().allMatch(word -> entry.words().contains(word) || entry.number().contains("\n" + word));
  }
}
