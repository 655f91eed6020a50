package hankbook.exchange;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What cannot be taken of one weaving file, with section and line; a file of nothing but faults is told by the first of them. */
final class WeavingFaults {
  static final int MOST = 20;
  private static final int LONGEST_FOUND = 40;

  private final String file;
  private final List<Told> faults = new ArrayList<>();
  private int more;

  private record Told(int line, String message) {}

  WeavingFaults(String file) {
    this.file = file;
  }

  /** The value of a line; empty, with the fault noted, where it cannot be read. */
  <T> Optional<T> read(WeavingLine line, Function<String, T> reader) {
    return read(line, line.value(), reader);
  }

  /** The number that is the key of a line; empty, with the fault noted, where it cannot be read. */
  <T> Optional<T> readKey(WeavingLine line, Function<String, T> reader) {
    return read(line, line.key(), reader);
  }

  private <T> Optional<T> read(WeavingLine line, String text, Function<String, T> reader) {
    try {
      return Optional.of(reader.apply(text));
    } catch (Unreadable unreadable) {
      add(line, unreadable.found(), unreadable.wanted());
      return Optional.empty();
    }
  }

  void add(WeavingLine line, String found, String wanted) {
    add(line.number(), heading(line.section()) + " " + shown(line.key()), found, wanted);
  }

  /** Notes a fault of one line; of the file as a whole where the line is 0. */
  void add(int line, String where, String found, String wanted) {
    if (faults.size() == MOST) {
      more++;
      return;
    }
    String place = line == 0 ? where : "line " + line + (where.isEmpty() ? "" : ", ") + where;
    faults.add(new Told(line, file + ", " + place + ": " + new Unreadable(shown(found), wanted).getMessage()));
  }

  void refuse() throws BadInput {
    if (faults.isEmpty()) {
      return;
    }
    List<String> messages = new ArrayList<>(faults.stream().sorted(Comparator.comparingInt(Told::line)).map(Told::message).toList());
    if (more > 0) {
      messages.add(file + ": found " + more + " faults more, wanted none");
    }
    throw new BadInput(messages);
  }

  static String heading(String section) {
    return "[" + shown(section.toUpperCase(Locale.ROOT)) + "]";
  }

  /** A text fit for one line of a message. */
  private static String shown(String text) {
    String plain = text.replaceAll("\\p{Cntrl}|\\p{Cs}", "�");
    return plain.length() > LONGEST_FOUND ? plain.substring(0, LONGEST_FOUND) + "…" : plain;
  }
}
