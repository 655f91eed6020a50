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

/**
 * The file in which what was typed lies from a fault until the next start. Nothing typed may vanish: a file that was read is not deleted but put aside.
 *
 * @param file where it lies
 */
public record PutBy(Path file) {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final TypeReference<LinkedHashMap<String, LinkedHashMap<String, String>>> FORMS = new TypeReference<>() {};

  static PutBy beside(FaultLog log) {
    return new PutBy(log.folder().resolve("typed.json"));
  }

  /** Where one lies that was read. */
  public Path aside() {
    return file.resolveSibling("typed-before.json");
  }

  /** Writes down what is typed, in the place of what was written before; the file, if anything was typed and it could be written. */
  Optional<Path> keep(Map<String, Map<String, String>> forms) {
    try {
      if (forms.isEmpty()) {
        return Optional.empty();
      }
      Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
      Path written = file.resolveSibling("typed.new");
      Files.writeString(written, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(forms) + "\n");
      Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
      return Optional.of(file);
    } catch (IOException _) {
      return Optional.empty();
    }
  }

  /** What was put by, once; it is put aside then. Empty where there is nothing, or nothing that can be read. */
  public Map<String, Map<String, String>> take() {
    try {
      if (!Files.exists(file)) {
        return Map.of();
      }
      Map<String, Map<String, String>> forms = new LinkedHashMap<>(JSON.readValue(Files.readString(file), FORMS));
      Files.move(file, aside(), StandardCopyOption.REPLACE_EXISTING);
      return Collections.unmodifiableMap(forms);
    } catch (IOException _) {
      return Map.of();
    }
  }
}
