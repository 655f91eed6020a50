package hankbook.desktop.say;

import hankbook.measure.Phrase;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Says a text in the language of whoever sits before the window. The English text stands in the code and is the key of its translations; values go where
 * {@code {0}}, {@code {1}} stand in it. The language is the same everywhere in the window, as the locale is everywhere in Java.
 */
public final class Say {
  private record Tongue(Language language, Catalogue catalogue) {}

  private static final char THIN_SPACE = '\u202F';

  private static volatile Tongue tongue = new Tongue(Language.ENGLISH, Catalogue.ENGLISH);

  private Say() {}

  /** Speaks a language from now on; what was said before stays as it was. */
  public static void in(Language language) {
    tongue = new Tongue(language, Catalogue.of(language));
  }

  /** The language that is spoken. */
  public static Language language() {
    return tongue.language();
  }

  /**
   * A text of the window.
   *
   * @param english a constant, so that a test can find every text
   * @param values what stands where {@code {0}}, {@code {1}} do
   */
  public static String text(String english, Object... values) {
    return filled(tongue.catalogue().text(english), values);
  }

  /**
   * A text whose English would be the same for two meanings.
   *
   * @param meaning in a word or two, such as {@code "an hour's"}; a constant
   */
  public static String meaning(String meaning, String english, Object... values) {
    String key = english + " (" + meaning + ")";
    String said = tongue.catalogue().text(key);
    return filled(said.equals(key) ? english : said, values);
  }

  /** So many of a thing: {@code {0}} is their number, further values come after it. Thousands stand apart by a thin space. */
  public static String count(long count, String one, String many, Object... more) {
    Catalogue.Forms forms = tongue.catalogue().counted(one, many);
    Object[] values = Stream.concat(Stream.of(count), Stream.of(more)).map(Say::apart).toArray();
    return filled(count == 1 ? forms.one() : forms.many(), values);
  }

  /** A whole number as it is written everywhere in the window; anything else as it is. */
  private static Object apart(Object value) {
    if (!(value instanceof Integer || value instanceof Long)) {
      return value;
    }
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setGroupingSeparator(THIN_SPACE);
    return new DecimalFormat("#,##0", symbols).format(value);
  }

  /** A text that comes from below the window, such as the name of a kind; as it is where it has no translation. */
  public static String known(String english) {
    return tongue.catalogue().text(english);
  }

  /**
   * A sentence that comes from below the window.
   *
   * @param written how a quantity is written in the units of whoever sits before the window
   */
  public static String phrase(Phrase phrase, Function<Object, String> written) {
    Catalogue catalogue = tongue.catalogue();
    String form = phrase.isCounted()
        ? phrase.form().equals(phrase.one()) ? catalogue.counted(phrase.one(), phrase.many()).one() : catalogue.counted(phrase.one(), phrase.many()).many()
        : catalogue.text(phrase.many());
    List<Object> values = phrase.values();
    return Phrase.filled(form, IntStream.range(0, values.size()).mapToObj(place -> value(phrase.isCounted() && place == 0 ? apart(values.get(0)) : values.get(place), written)).toList());
  }

  private static String value(Object value, Function<Object, String> written) {
    return switch (value) {
      case Phrase phrase -> phrase(phrase, written);
      case Phrase.Word word -> known(word.english());
      case Phrase.Listed listed -> new Phrase.Listed(listed.values(), known(listed.between())).joined(each -> value(each, written));
      default -> written.apply(value);
    };
  }

  private static String filled(String text, Object... values) {
    return values.length == 0 ? text : Phrase.filled(text, Stream.of(values).map(Object::toString).toList());
  }
}
