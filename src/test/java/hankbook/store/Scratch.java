package hankbook.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder for as long as it is needed, where JUnit cannot give one. */
final class Scratch implements AutoCloseable {
  private final Path folder;

  Scratch() {
    try {
      folder = Files.createTempDirectory("hankbook");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  Path folder() {
    return folder;
  }

  @Override
  public void close() {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
      for (Path file : deepestFirst) {
        Files.delete(file);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
