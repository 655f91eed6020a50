package hankbook.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SchemaTest {
  @ParameterizedTest
  @EnumSource
  void theNewestVersionIsThatOfTheNewestFileOnTheClassPath(Vendor vendor) {
    assertThat(Stream.of("migration", vendor.folder).flatMap(SchemaTest::versions)).contains(Schema.NEWEST).doesNotHaveDuplicates().allMatch(v -> v <= Schema.NEWEST);
  }

  private static Stream<Integer> versions(String folder) {
    try (Stream<Path> files = Files.list(Path.of(Objects.requireNonNull(Schema.class.getResource("/db/" + folder)).toURI()))) {
      List<Integer> versions = files.map(file -> String.valueOf(file.getFileName())).map(name -> Integer.valueOf(name.replaceFirst("V(\\d+)__.*\\.sql", "$1"))).toList();
      return versions.stream();
    } catch (IOException | URISyntaxException broken) {
      throw new AssertionError(broken);
    }
  }
}
