package hankbook.desktop.fault;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The file in which what was typed lies from a fault until the next start. Nothing typed may vanish: a file that was read is not deleted but put aside.
 *
 * @param file where it lies
 */
public record PutBy(Path file) {
  private static final String LEDGER = "ledger";
  private static final String ADDRESS = "address";
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final TypeReference<LinkedHashMap<String, LinkedHashMap<String, String>>> FORMS = new TypeReference<>() {};

  static PutBy beside(FaultLog log) {
    return new PutBy(log.folder().resolve("typed.json"));
  }

  /**
   * What was put by, and where it lies aside now.
   *
   * @param forms for each form the texts by the names of its fields
   */
  public record Before(Map<String, Map<String, String>> forms, Path aside) {}

  /** Puts the file aside, where there is one, under a name that no other has. */
  void putAside() {
    try {
      if (Files.exists(file)) {
        Files.move(file, aside());
      }
    } catch (IOException _) {
      // It stays where it is, and is read again at the next start.
    }
  }

  private Path aside() {
    return Stream.iterate(1, number -> number + 1).map(number -> file.resolveSibling(number == 1 ? "typed-before.json" : "typed-before-" + number + ".json"))
        .filter(free -> !Files.exists(free)).findFirst().orElseThrow();
  }

  /**
   * Writes down what is typed, in the place of what was written before; the file, if anything was typed and it could be written.
   *
   * @param ledger the address of the ledger that it is meant for
   */
  Optional<Path> keep(String ledger, Map<String, Map<String, String>> typed) {
    try {
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      Map<String, Map<String, String>> forms = new LinkedHashMap<>(Map.of(LEDGER, Map.of(ADDRESS, ledger)));
      forms.putAll(typed);
      Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
      Path written = file.resolveSibling("typed.new");
      Files.writeString(written, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(forms) + "\n");
      Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
      return Optional.of(file);
    } catch (IOException _) {
      return Optional.empty();
    }
  }

  /** What was put by for a ledger, once; it is put aside then. Empty where there is nothing, nothing that can be read, or what is meant for another ledger. */
  Optional<Before> take(String ledger) {
    try {
      if (!Files.exists(file)) {
        return Optional.empty();
      }
      Map<String, Map<String, String>> forms = new LinkedHashMap<>(JSON.readValue(Files.readString(file), FORMS));
      Map<String, String> meant = forms.remove(LEDGER);
      if (meant != null && !ledger.equals(meant.get(ADDRESS))) {
        return Optional.empty();
      }
      Path aside = aside();
      Files.move(file, aside);
      return Optional.of(new Before(Collections.unmodifiableMap(forms), aside));
    } catch (IOException _) {
      return Optional.empty();
    }
  }
}
