package hankbook.studio;

import hankbook.measure.Unreadable;

/** What a person wants the journal to say of an entry. */
final class Note {
  private Note() {}

  /**
   * The text without spaces around it; may be empty and may have several lines.
   *
   * @throws Unreadable if it has characters that cannot be printed
   */
  static String of(String text) {
    String note = text.strip();
    if (note.codePoints().anyMatch(c -> (Character.isISOControl(c) && c != '\n' && c != '\t') || Character.getType(c) == Character.SURROGATE)) {
      throw new Unreadable(note.replaceAll("\\p{Cntrl}|\\p{Cs}", "�"), "a note of printable characters");
    }
    return note;
  }
}
