package hankbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing that belongs to the making of the project is left lying in it. */
class TidyTest {
  /** Put together here, so that this file is not its own first finding. */
  private static final Pattern LEFT_OVER = Pattern.compile("^(<{7}|>{7}|={7}$)|\\bT" + "ODO\\b|\\bFIX" + "ME\\b", Pattern.MULTILINE);

  @Test
  void noConflictIsHalfMergedAndNoNoteToOneselfIsLeft() {
    assertThat(Stream.of("src", "docs", "db", "imports", "README.md", "DEVELOPERS.md", "pom.xml").flatMap(TidyTest::leftOver)).isEmpty();
  }

  private static Stream<String> leftOver(String where) {
    try (Stream<Path> files = Files.walk(Path.of(where))) {
      List<Path> texts = files.filter(file -> file.toString().matches(".*\\.(java|md|xml|sql|css|json|csv|properties|wif)")).toList();
      return texts.stream().filter(file -> LEFT_OVER.matcher(text(file)).find()).map(Path::toString);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
