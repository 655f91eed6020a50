package hankbook.ledger;

/** Checks on the texts an entry is made of. */
final class Words {
  private Words() {}

  /** A name: something to read, on one line, without spaces around it. */
  static String name(String field, String value) {
    if (value.isBlank() || !value.equals(value.strip())) {
      throw wrong(field, value, "a text that is not blank and has no spaces around it");
    }
    if (value.codePoints().anyMatch(c -> Character.isISOControl(c) || loneSurrogate(c))) {
      throw wrong(field, value, "one line of printable text");
    }
    return value;
  }

  /** A note: may be empty and may have several lines. */
  static String note(String field, String value) {
    if (value.codePoints().anyMatch(c -> (Character.isISOControl(c) && c != '\n' && c != '\t') || loneSurrogate(c))) {
      throw wrong(field, value, "printable text");
    }
    return value;
  }

  static IllegalArgumentException wrong(String field, Object value, String wanted) {
    return new IllegalArgumentException(field + " is \"" + value + "\", wanted " + wanted);
  }

  /** Half a character has no bytes of its own, so two different texts could share a hash. */
  private static boolean loneSurrogate(int codePoint) {
    return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }
}
