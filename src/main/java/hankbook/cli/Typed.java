package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import java.util.function.Function;

/** What was typed on the command line, read so that a refusal says where it stood. */
final class Typed {
  private Typed() {}

  static <T> T read(String where, String text, Function<String, T> reader) throws BadInput {
    try {
      return reader.apply(text);
    } catch (Unreadable unreadable) {
      throw new BadInput(where + ": " + unreadable.getMessage());
    }
  }
}
