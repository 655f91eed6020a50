package hankbook.studio.shelf;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts as they are compared: without case and without marks on letters. */
final class Folded {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private Folded() {}

  static String of(String text) {
    return MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("").toLowerCase(Locale.ROOT).replace("ß", "ss");
  }

  /** Whether something stands in a text at the start of a word; letters and digits make words of their own. */
  static boolean startsWordIn(String text, String sought) {
    for (int at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + 1)) {
      if (at == 0 || parts(text.charAt(at - 1), text.charAt(at))) {
        return true;
      }
    }
    return false;
  }

  /** The same, but a number at its end must end there in the text as well. */
  static boolean isWordIn(String text, String sought) {
    for (int at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + 1)) {
      int end = at + sought.length();
      boolean cut = end < text.length() && Character.isDigit(text.charAt(end - 1)) && Character.isDigit(text.charAt(end));
      if (!cut && (at == 0 || parts(text.charAt(at - 1), text.charAt(at)))) {
        return true;
      }
    }
    return false;
  }

  private static boolean parts(char before, char after) {
    return !Character.isLetterOrDigit(before) || Character.isDigit(before) != Character.isDigit(after);
  }
}
