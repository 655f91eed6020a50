package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the style sheets to the few steps and roles of docs/decisions/0016-the-look.md. */
class SheetsTest {
  private static final Path SHEETS = Path.of("src", "main", "resources", "hankbook", "desktop");
  private static final Set<String> THEMES = Set.of("light.css", "dark.css");

  /** Type: said quietly, text, the name of a part or what is read from a step away, the name of a screen. */
  private static final Set<String> TYPE = Set.of("12px", "13px", "15px", "19px");

  private static final Set<String> SPACE = Set.of("0", "1", "2", "3", "4", "6", "8", "10", "12", "14", "16", "20", "24", "40");

  /** What is set in by the width of what stands before it. */
  private static final String SET_IN = "0 0 0 66";

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{3,8}\\b(?=[^{]*;)|\\b(?:rgba?|hsla?)\\(|-fx-(?:fill|text-fill|background-color|border-color|stroke): *(?!transparent)[a-z]+ *;");
  private static final Pattern FONT_SIZE = Pattern.compile("-fx-font-size: *([^;]+);");
  private static final Pattern SPACING = Pattern.compile("-fx-(?:padding|spacing|hgap|vgap|graphic-text-gap): *([^;]+);");

  @Test
  void coloursStandOnlyInTheTwoThemesAndEverythingElseNamesTheirRoles() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path sheet : sheets()) {
      if (!THEMES.contains(name(sheet))) {
        COLOUR.matcher(rules(sheet)).results().map(MatchResult::group).forEach(colour -> found.add(name(sheet) + ": " + colour));
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void lettersHaveOneOfFewSizes() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path sheet : sheets()) {
      FONT_SIZE.matcher(rules(sheet)).results().map(size -> size.group(1)).filter(size -> !TYPE.contains(size)).forEach(size -> found.add(name(sheet) + ": " + size));
    }
    assertThat(found).as("sizes of letters, wanted one of %s", TYPE).isEmpty();
  }

  @Test
  void roomIsLeftInFewSteps() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path sheet : sheets()) {
      SPACING.matcher(rules(sheet)).results()
          .filter(room -> !room.group(1).strip().equals(SET_IN))
          .filter(room -> !Stream.of(room.group(1).strip().split(" +", -1)).map(step -> step.replace("px", "")).allMatch(SPACE::contains))
          .forEach(room -> found.add(name(sheet) + ": " + room.group()));
    }
    assertThat(found).as("room, wanted in steps of %s", SPACE).isEmpty();
  }

  @Test
  void bothThemesGiveAColourToTheSameRoles() throws IOException {
    Pattern role = Pattern.compile("^ +(-[a-z0-9-]+):", Pattern.MULTILINE);
    List<List<String>> roles = new ArrayList<>();
    for (String theme : List.of("light.css", "dark.css")) {
      roles.add(role.matcher(rules(SHEETS.resolve(theme))).results().map(found -> found.group(1)).sorted().toList());
    }
    assertThat(roles.getFirst()).isEqualTo(roles.getLast()).isNotEmpty();
  }

  private static List<Path> sheets() throws IOException {
    try (Stream<Path> files = Files.walk(SHEETS)) {
      return files.filter(file -> file.toString().endsWith(".css")).sorted().toList();
    }
  }

  private static String rules(Path sheet) throws IOException {
    return Files.readString(sheet).replaceAll("(?s)/\\*.*?\\*/", "");
  }

  private static String name(Path sheet) {
    return String.valueOf(sheet.getFileName());
  }
}
