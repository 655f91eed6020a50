package hankbook.desktop;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Proposes a code for the next skein in the way the owner has numbered so far. */
final class NextCode {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");
  private static final String FIRST = "S001";

  private NextCode() {}

  /** The code after the highest of the commonest sort, as wide as that one. */
  static String after(List<String> codes) {
    Map<String, List<String>> byPrefix = codes.stream()
        .map(NUMBERED::matcher)
        .filter(Matcher::matches)
        .collect(Collectors.groupingBy(match -> match.group(1), Collectors.mapping(match -> match.group(2), Collectors.toList())));
    return byPrefix.entrySet().stream()
        .max(Comparator.comparingInt((Map.Entry<String, List<String>> sort) -> sort.getValue().size()).thenComparing(Map.Entry::getKey))
        .map(sort -> sort.getKey() + next(sort.getValue()))
        .orElse(FIRST);
  }

  private static String next(List<String> numbers) {
    String highest = numbers.stream().max(Comparator.comparingLong(Long::parseLong)).orElseThrow();
    return String.format("%0" + highest.length() + "d", Long.parseLong(highest) + 1);
  }
}
