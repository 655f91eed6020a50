package hankbook.exchange;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The sections of a weaving file that say anything about yarn, cut into keys and values; all others are passed over. */
final class WeavingSections {
  /** Those in which every line is a key and its value; a text may run over its line. */
  private static final Set<String> STRICT =
      Set.of(
          "wif", "weaving", "warp", "weft", "color palette", "color table", "warp colors", "weft colors", "warp spacing", "weft spacing", "warp thickness",
          "weft thickness", "threading", "treadling", "liftplan", "tieup");

  private static final String TEXT = "text";
  private static final String NONE = "";

  private final WeavingFaults faults;
  private final Map<String, Map<String, WeavingLine>> sections = new HashMap<>();
  private String current = NONE;
  private boolean begun;

  private WeavingSections(WeavingFaults faults) {
    this.faults = faults;
  }

  static WeavingSections of(String text, WeavingFaults faults) {
    WeavingSections sections = new WeavingSections(faults);
    int number = 0;
    for (String line : (Iterable<String>) text.lines()::iterator) {
      sections.read(++number, line.strip());
    }
    return sections;
  }

  /** Whether no section was found that could tell anything. */
  boolean isEmpty() {
    return sections.isEmpty();
  }

  boolean has(String section) {
    return sections.containsKey(section);
  }

  /** What a section says, by key, in the file's order. */
  Collection<WeavingLine> lines(String section) {
    return sections.getOrDefault(section, Map.of()).values();
  }

  /** What a section says under a key; a value left blank says nothing. */
  Optional<WeavingLine> line(String section, String key) {
    return Optional.ofNullable(sections.getOrDefault(section, Map.of()).get(key)).filter(line -> !line.value().isEmpty());
  }

  private void read(int number, String line) {
    if (line.isEmpty() || line.startsWith(";")) {
      return;
    }
    if (line.startsWith("[")) {
      head(number, line);
      return;
    }
    int equals = line.indexOf('=');
    if (equals > 0 && !current.isEmpty()) {
      add(new WeavingLine(number, current, key(line.substring(0, equals)), value(line.substring(equals + 1))));
    } else if (!begun) {
      faults.add(number, "", line, "a section in square brackets such as [WARP]");
      begun = true;
    } else if (STRICT.contains(current)) {
      faults.add(number, WeavingFaults.heading(current), line, "a key and its value, such as 1=2");
    }
  }

  private void head(int number, String line) {
    int end = line.indexOf(']');
    begun = true;
    if (end < 0) {
      faults.add(number, "", line, "a section in square brackets such as [WARP]");
      current = NONE;
      return;
    }
    String name = line.substring(1, end).strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    current = STRICT.contains(name) || name.equals(TEXT) ? name : NONE;
    if (!current.isEmpty()) {
      sections.computeIfAbsent(current, section -> new LinkedHashMap<>());
    }
  }

  /** Whatever its case; 01 is 1. */
  private static String key(String written) {
    return written.strip().toLowerCase(Locale.ROOT).replaceFirst("^0+(?=\\d)", "");
  }

  /** A remark may stand behind a value; in a text the semicolon is part of it. */
  private String value(String written) {
    int remark = current.equals(TEXT) ? -1 : written.indexOf(';');
    return (remark < 0 ? written : written.substring(0, remark)).strip();
  }

  /** Of two lines that differ neither is more to be believed. */
  private void add(WeavingLine line) {
    WeavingLine before = sections.computeIfAbsent(line.section(), section -> new LinkedHashMap<>()).putIfAbsent(line.key(), line);
    if (before != null && !before.value().equalsIgnoreCase(line.value()) && !line.section().equals(TEXT)) {
      faults.add(line, line.value(), (before.value().isEmpty() ? "nothing" : before.value()) + " as line " + before.number() + " says, or one of the two lines gone");
    }
  }
}
