package hankbook.measure;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sentence with the values that stand in it, so that the command line can say it in English and the window in the language and units of whoever sits before it.
 * A value is a quantity, a name, another phrase, or one of the records below where its English is not what it prints itself as.
 *
 * @param one the English for one thing; the same as {@code many} where nothing is counted
 * @param many the English for any other number of them, {@code {0}}, {@code {1}} standing where the values go
 * @param values what goes there; the first is the number where something is counted
 */
public record Phrase(String one, String many, List<Object> values) {
  /** A quantity that the English writes in its own way. */
  public record As(Object quantity, String english) {}

  /** A width of cloth, or in the reed, and a length of loom waste: what is said in centimetres or inches. */
  public record Width(Length length, String english) {}

  /** A part of something in percent. */
  public record Percent(BigFraction part, int places) {}

  /** A number with at most so many places. */
  public record Figure(BigFraction number, int places) {}

  /** A word that has one of its own in every language. */
  public record Word(String english) {}

  /** Several values with a comma, or another mark, between them. */
  public record Listed(List<Object> values, String between) {
    public Listed {
      values = List.copyOf(values);
    }

    /** The values, each written by a function. */
    public String joined(Function<Object, String> written) {
      return values.stream().map(written).collect(Collectors.joining(between));
    }
  }

  public Phrase {
    values = List.copyOf(values);
  }

  /** A sentence. The English is a constant, so that a test can find every text. */
  public static Phrase of(String english, Object... values) {
    return new Phrase(english, english, Arrays.asList(values));
  }

  /** A value alone, which is the same sentence in every language. */
  public static Phrase just(Object value) {
    return new Phrase("{0}", "{0}", List.of(value));
  }

  /** A sentence on so many of a thing: {@code {0}} is their number, further values come after it. */
  public static Phrase count(long count, String one, String many, Object... more) {
    List<Object> values = new ArrayList<>(List.of(count));
    values.addAll(Arrays.asList(more));
    return new Phrase(one, many, values);
  }

  /** A length of yarn, in English in metres with so many places. */
  public static As yarn(Length length, int places) {
    return new As(length, length.print(LengthUnit.METRE, places));
  }

  /** A width, in English in centimetres with one place. */
  public static Width width(Length length) {
    return new Width(length, length.print(LengthUnit.CENTIMETRE, 1));
  }

  /** A width in tenths of a millimetre. */
  public static Width width(BigFraction tenths) {
    return width(Length.ofTenths(tenths, RoundingMode.HALF_UP));
  }

  /** Several values with commas between them. */
  public static Listed list(List<?> values) {
    return new Listed(List.copyOf(values), ", ");
  }

  /** Whether it has a form of its own for one thing. */
  public boolean isCounted() {
    return !one.equals(many);
  }

  /** The form for its number. */
  public String form() {
    return isCounted() && values.getFirst() instanceof Long count && count == 1 ? one : many;
  }

  /** The sentence in English, with metric units. */
  public String english() {
    return filled(form(), values.stream().map(Phrase::english).toList());
  }

  private static String english(Object value) {
    return switch (value) {
      case Phrase phrase -> phrase.english();
      case As as -> as.english();
      case Width width -> width.english();
      case Percent percent -> Exact.plain(percent.part().multiply(100), percent.places()) + " %";
      case Figure figure -> Exact.plain(figure.number(), figure.places());
      case Word word -> word.english();
      case Listed listed -> listed.joined(Phrase::english);
      default -> value.toString();
    };
  }

  /** Puts values where their numbers stand in a text; a brace that is no value stays. */
  public static String filled(String text, List<String> values) {
    StringBuilder filled = new StringBuilder();
    int from = 0;
    for (int brace = text.indexOf('{'); brace >= 0; brace = text.indexOf('{', brace + 1)) {
      int close = brace + 2;
      if (close < text.length() && text.charAt(close) == '}' && Character.isDigit(text.charAt(brace + 1))) {
        int place = text.charAt(brace + 1) - '0';
        filled.append(text, from, brace).append(place < values.size() ? values.get(place) : text.substring(brace, close + 1));
        from = close + 1;
      }
    }
    return filled.append(text, from, text.length()).toString();
  }

  @Override
  public String toString() {
    return english();
  }
}
