package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RememberedFileTest {
  private static final WindowPlace PLACE = new WindowPlace(-40, 20, 1100, 700, true);
  private static final TableLook LOOK = new TableLook(List.of(new TableLook.Column("±", 66, false)), List.of(new TableLook.Sorted("±", true)));

  @TempDir
  Path dir;

  @Test
  void whatIsWrittenIsReadAgainAndNothingElseIsLeftInTheFolder() throws IOException {
    Remembered remembered = Remembered.nothing();
    remembered.put("window", PLACE);
    remembered.put("table skeins", LOOK);
    remembered.put("theme", Theme.DARK);
    remembered.put("count on order", true);
    assertThat(file().write(remembered.json())).isTrue();
    assertThat(file().write(remembered.json())).isTrue();

    Remembered again = file().read();
    assertThat(again.get("window", WindowPlace.class)).contains(PLACE);
    assertThat(again.get("table skeins", TableLook.class)).contains(LOOK);
    assertThat(Theme.in(again)).isEqualTo(Theme.DARK);
    assertThat(again.get("count on order", Boolean.class)).contains(true);
    try (Stream<Path> files = Files.list(file().file().resolveSibling(""))) {
      assertThat(files).containsExactly(file().file());
    }
  }

  @Test
  void withoutAFileNothingIsRememberedAndNoneIsMade() {
    assertThat(file().read().get("theme", String.class)).isEmpty();
    assertThat(dir).isEmptyDirectory();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{\"theme\": \"DARK\"", "[]", "{} {}", "\0\0\0\0", "theme = dark"})
  void aBrokenFileIsPutAsideAndCountsAsNone(String broken) throws IOException {
    Files.createDirectories(file().file().resolveSibling(""));
    Files.writeString(file().file(), broken);
    assertThat(file().read().json()).isEqualTo(Remembered.nothing().json());
    assertThat(file().file()).doesNotExist();
    assertThat(file().aside()).hasContent(broken);
  }

  @Test
  void bytesThatAreNoTextArePutAsideInThePlaceOfWhatWasPutAsideBefore() throws IOException {
    Files.createDirectories(file().file().resolveSibling(""));
    Files.writeString(file().aside(), "older");
    Files.write(file().file(), new byte[] {'{', (byte) 0xff, '}'});
    assertThat(Theme.in(file().read())).isEqualTo(Theme.LIGHT);
    assertThat(file().aside()).hasBinaryContent(new byte[] {'{', (byte) 0xff, '}'});
  }

  @Test
  void aFolderThatCannotBeMadeIsNoFault() throws IOException {
    Path taken = Files.createFile(dir.resolve("taken"));
    RememberedFile nowhere = new RememberedFile(taken.resolve("window.json"));
    assertThat(nowhere.write("{}")).isFalse();
    assertThat(nowhere.read().get("theme", String.class)).isEmpty();
  }

  @Test
  void aLinkToTheFileStaysALink() throws IOException {
    Path real = Files.writeString(dir.resolve("elsewhere.json"), "{}");
    Path link = Files.createSymbolicLink(dir.resolve("window.json"), real);
    assertThat(new RememberedFile(link).write("{\"a\": 1}")).isTrue();
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("{\"a\": 1}");
  }

  @Test
  void keysAndMembersThatNobodyKnowsAreKept() {
    Remembered remembered = Remembered.of("{\"later\": [1, {\"x\": null}], \"window\": {\"x\": 1, \"shade\": \"rolled up\"}}").orElseThrow();
    remembered.put("window", PLACE);
    Remembered again = Remembered.of(remembered.json()).orElseThrow();
    assertThat(again.get("window", WindowPlace.class)).contains(PLACE);
    assertThat(again.json()).contains("rolled up").contains("later");
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "null", "7", "\"wide\"", "{}", "{\"x\": 1}", "{\"x\": 1, \"y\": 1, \"width\": 0, \"height\": 5, \"maximised\": false}",
      "{\"x\": 1, \"y\": null, \"width\": 9, \"height\": 5, \"maximised\": false}", "{\"x\": 99999999999, \"y\": 1, \"width\": 9, \"height\": 5, \"maximised\": false}"})
  void aValueThatCannotBeReadCountsAsNeverSaid(String value) {
    Remembered remembered = Remembered.of("{\"window\": " + value + ", \"theme\": \"PINK\"}").orElseThrow();
    assertThat(remembered.get("window", WindowPlace.class)).isEmpty();
    assertThat(Theme.in(remembered)).isEqualTo(Theme.LIGHT);
  }

  @Test
  void onlyAChangeIsTold() {
    Remembered remembered = Remembered.of("{\"window\": {\"x\": -40, \"y\": 20, \"width\": 1100, \"height\": 700, \"maximised\": true}}").orElseThrow();
    int[] told = {0};
    remembered.whenChanged(() -> told[0]++);
    remembered.put("window", PLACE);
    assertThat(told[0]).isZero();
    remembered.put("window", PLACE.maximised(false));
    assertThat(told[0]).isEqualTo(1);
    assertThat(remembered.get("window", WindowPlace.class)).isEqualTo(Optional.of(PLACE.maximised(false)));
  }

  private RememberedFile file() {
    return new RememberedFile(dir.resolve("settings").resolve("window.json"));
  }
}
