package hankbook.cost;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** By what the yarn in the house is valued. */
public enum ValueMethod {
  IDENTIFIED("identified cost: what was paid for each skein"),
  FIFO("first in, first out: what the newest metres of each yarn and colour cost"),
  AVERAGE("moving weighted average of each yarn and colour");

  private final String words;

  ValueMethod(String words) {
    this.words = words;
  }

  /** As it is typed and kept; never changed. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What it is, in words. */
  public String words() {
    return words;
  }

  /**
   * Reads what {@link #key} gives.
   *
   * @throws Unreadable if it is none of them
   */
  public static ValueMethod parse(String text) {
    return Arrays.stream(values())
        .filter(method -> method.key().equals(text.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> new Unreadable(text, Phrase.of("one of {0}", Arrays.stream(values()).map(ValueMethod::key).collect(Collectors.joining(", ")))));
  }
}
