package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThemeTest {
  private static final Pattern ROLE = Pattern.compile("(-(?:color|hb)-[a-z0-9-]+): (#[0-9a-f]{6});");

  /** The least contrast for text: WCAG 2.2, success criterion 1.4.3. */
  private static final double LEAST = 4.5;

  private static final double LEAST_DRAWN = 3;

  @ParameterizedTest
  @ValueSource(strings = {"light.css", "dark.css"})
  void everyTextStandsOutFromWhatItStandsOn(String sheet) throws IOException {
    Map<String, String> roles = roles(sheet);
    for (String text : List.of("-color-fg-default", "-color-fg-muted", "-color-accent-fg", "-color-danger-fg", "-color-success-fg", "-color-warning-fg")) {
      for (String ground : List.of("-color-bg-default", "-color-bg-subtle", "-hb-ground", "-hb-chosen", "-hb-navigation")) {
        assertThat(contrast(role(roles, text), role(roles, ground))).as("%s on %s in %s", text, ground, sheet).isGreaterThanOrEqualTo(LEAST);
      }
    }
    assertThat(contrast(role(roles, "-color-fg-emphasis"), role(roles, "-color-accent-emphasis"))).isGreaterThanOrEqualTo(LEAST);
  }

  /** Where the yarn went is drawn in these; the least contrast for drawn things is that of WCAG 2.2, success criterion 1.4.11. */
  @ParameterizedTest
  @ValueSource(strings = {"light.css", "dark.css"})
  void everyBarStandsOutFromWhatItIsDrawnOn(String sheet) throws IOException {
    Map<String, String> roles = roles(sheet);
    for (String bar : List.of("-color-fg-muted", "-color-danger-emphasis", "-color-accent-4")) {
      assertThat(contrast(role(roles, bar), role(roles, "-color-bg-default"))).as("%s in %s", bar, sheet).isGreaterThanOrEqualTo(LEAST_DRAWN);
      assertThat(contrast(role(roles, bar), role(roles, "-color-bg-inset"))).as("%s in its track in %s", bar, sheet).isGreaterThanOrEqualTo(LEAST_DRAWN);
    }
  }

  /** WCAG 2.2, success criteria 1.4.11 and 2.4.7. */
  @ParameterizedTest
  @ValueSource(strings = {"light.css", "dark.css"})
  void theRingAroundWhatHasTheKeyboardStandsOutFromEveryGround(String sheet) throws IOException {
    Map<String, String> roles = roles(sheet);
    for (String ground : List.of("-color-bg-default", "-color-bg-subtle", "-color-bg-inset", "-hb-ground", "-hb-chosen", "-hb-navigation")) {
      assertThat(contrast(role(roles, "-hb-focus"), role(roles, ground))).as("on %s in %s", ground, sheet).isGreaterThanOrEqualTo(LEAST_DRAWN);
    }
  }

  private static Map<String, String> roles(String sheet) throws IOException {
    try (InputStream in = Objects.requireNonNull(Theme.class.getResourceAsStream(sheet))) {
      return ROLE.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8)).results()
          .collect(Collectors.toMap(found -> found.group(1), found -> found.group(2)));
    }
  }

  private static Color role(Map<String, String> roles, String name) {
    return Color.web(Objects.requireNonNull(roles.get(name), name));
  }

  private static double contrast(Color one, Color other) {
    return Contrast.ratio(one, other);
  }
}
