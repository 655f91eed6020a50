package hankbook.desktop.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class UnsaidTest {
  /** What looks like a text and is none, each with its because. */
  private static final Map<String, String> NO_TEXTS = Map.ofEntries(
      Map.entry("\"Linux\"", "is what a system calls itself"),
      Map.entry("\"Headless\"", "is what the toolkit calls a screen"),
      Map.entry("\"Hankbook\"", "is a name"),
      Map.entry("-end satin\"", "is typed so in every language"),
      Map.entry("Chord.java", "is said for each key on its own"),
      Map.entry("\"any yarn\"", "is said where it is shown"),
      Map.entry("\"By\"", "ends the name of a field"),
      Map.entry("\"line \"", "begins the name of a field"),
      Map.entry("\"other fields\"", "is a key of what was typed"),
      Map.entry("\"split \"", "begins a key of what the window remembers"),
      Map.entry("\"table \"", "begins a key of what the window remembers"),
      Map.entry("\"size of everything\"", "is a key of what the window remembers"),
      Map.entry("\"count on order\"", "is a key of what the window remembers"),
      Map.entry("\"units apart\"", "is a key of what the window remembers"),
      Map.entry("\"loom waste\"", "is what a node is found by"),
      Map.entry("Language.java", "names each language in itself"),
      Map.entry("FaultLog.java", "is for whoever mends the program"),
      Map.entry("FaultReport.java", "is for whoever mends the program"),
      Map.entry("\"that tells of faults\"", "is for whoever mends the program"),
      Map.entry("Theme.java", "is a fault of our own"),
      Map.entry("Guide.java", "is a fault of our own"),
      Map.entry("Catalogue.java", "is a fault of our own"));

  @Test
  void nothing_that_looks_like_a_text_is_left_unsaid() throws IOException {
    TextsInCode all = TextsInCode.under(Path.of("src/main/java/hankbook"));
    assertThat(all.unsaid().stream().filter(found -> NO_TEXTS.keySet().stream().noneMatch(found::contains)).toList()).isEmpty();
  }
}
