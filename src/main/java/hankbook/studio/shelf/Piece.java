package hankbook.studio.shelf;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a question between spaces; what stands between quotation marks is kept together.
 *
 * @param text without quotation marks
 * @param plainTo up to where it stands outside of quotation marks
 * @param typed as it was typed
 */
record Piece(String text, int plainTo, String typed) {
  private static final String MARKS = "\"\u201C\u201D\u201E\u00AB\u00BB";

  static List<Piece> of(String question) {
    List<Piece> pieces = new ArrayList<>();
    int from = 0;
    boolean quoted = false;
    for (int at = 0; at <= question.length(); at++) {
      boolean end = at == question.length();
      quoted ^= !end && isMark(question.charAt(at));
      if (end || (!quoted && isSpace(question.charAt(at)))) {
        add(pieces, question.substring(from, at));
        from = at + 1;
      }
    }
    return pieces;
  }

  private static boolean isMark(char letter) {
    return MARKS.indexOf(letter) >= 0;
  }

  private static boolean isSpace(char letter) {
    return Character.isWhitespace(letter) || Character.isSpaceChar(letter);
  }

  private static void add(List<Piece> pieces, String typed) {
    StringBuilder text = new StringBuilder();
    int plainTo = -1;
    for (int at = 0; at < typed.length(); at++) {
      char letter = typed.charAt(at);
      if (!isMark(letter)) {
        text.append(isSpace(letter) ? ' ' : letter);
      } else if (plainTo < 0) {
        plainTo = text.length();
      }
    }
    if (!text.toString().isBlank()) {
      pieces.add(new Piece(text.toString(), plainTo < 0 ? text.length() : plainTo, typed));
    }
  }

  boolean isPlain() {
    return plainTo == text.length();
  }

  boolean isQuoted() {
    return plainTo == 0;
  }

  /** Without its first letters. */
  Piece from(int start) {
    return new Piece(text.substring(start), Math.max(0, plainTo - start), typed);
  }
}
