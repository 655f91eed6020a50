package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The colours are those that CSS gives its names to, as the toolkit's {@code Color.web} knows them. */
class TintTest {
  @ParameterizedTest
  @ValueSource(strings = {
    "blue", "steelblue", "navy", "royalblue", "cornflowerblue", "midnightblue", "skyblue", "powderblue", "dodgerblue", "lightblue", "slateblue"
  })
  void blueIsBlue(String name) {
    assertThat(tints(name)).as(name).contains(Tint.BLUE).doesNotContain(Tint.RED, Tint.YELLOW, Tint.ORANGE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"green", "darkgreen", "forestgreen", "seagreen", "lightgreen", "yellowgreen", "lawngreen", "olivedrab", "darkolivegreen", "springgreen"})
  void greenIsGreen(String name) {
    assertThat(tints(name)).as(name).contains(Tint.GREEN).doesNotContain(Tint.RED, Tint.PURPLE, Tint.BROWN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"red", "darkred", "firebrick", "crimson", "indianred", "maroon"})
  void redIsRed(String name) {
    assertThat(tints(name)).as(name).contains(Tint.RED).doesNotContain(Tint.GREEN, Tint.BLUE, Tint.YELLOW);
  }

  @ParameterizedTest
  @ValueSource(strings = {"saddlebrown", "sienna", "brown", "peru", "chocolate"})
  void brownIsBrown(String name) {
    assertThat(tints(name)).as(name).containsAnyOf(Tint.BROWN, Tint.RED, Tint.ORANGE).doesNotContain(Tint.BLUE, Tint.GREEN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"grey", "lightgrey", "dimgrey", "darkgrey", "slategrey"})
  void greyIsGrey(String name) {
    assertThat(tints(name)).as(name).contains(Tint.GREY).doesNotContain(Tint.RED, Tint.BROWN, Tint.BLACK);
  }

  @Test
  void theRestIsCalledWhatItIsCalled() {
    assertThat(tints("yellow")).containsExactly(Tint.YELLOW);
    assertThat(tints("gold")).contains(Tint.YELLOW);
    assertThat(tints("orange")).contains(Tint.ORANGE);
    assertThat(tints("purple")).contains(Tint.PURPLE);
    assertThat(tints("darkviolet")).contains(Tint.PURPLE);
    assertThat(tints("pink")).contains(Tint.PINK);
    assertThat(tints("hotpink")).contains(Tint.PINK);
    assertThat(tints("turquoise")).contains(Tint.TURQUOISE);
    assertThat(tints("teal")).contains(Tint.TURQUOISE);
    assertThat(tints("black")).containsExactly(Tint.BLACK);
    assertThat(tints("white")).containsExactly(Tint.WHITE);
    assertThat(tints("ivory")).contains(Tint.WHITE);
  }

  /** Every 8th step of each channel: 36 thousand colours. */
  @Test
  void noColourIsWithoutAWord() {
    for (int red = 0; red < 256; red += 8) {
      for (int green = 0; green < 256; green += 8) {
        for (int blue = 0; blue < 256; blue += 8) {
          String hex = String.format("#%02x%02x%02x", red, green, blue);
          assertThat(Tint.of(Colour.ofHex(hex))).as(hex).isNotEmpty();
        }
      }
    }
  }

  @Test
  void coloursHangRoundTheHuesAndGreysFromLightToDarkAtTheEnd() {
    List<String> names = List.of("white", "navy", "red", "grey", "gold", "black", "green", "purple", "skyblue", "orange", "lightgrey");
    List<String> hung = names.stream().sorted((one, other) -> new HueOrder().compare(colour(one), colour(other))).toList();
    assertThat(hung).containsExactly("red", "orange", "gold", "green", "skyblue", "navy", "purple", "white", "lightgrey", "grey", "black");
  }

  private static Set<Tint> tints(String name) {
    return Tint.of(colour(name));
  }

  private static Colour colour(String name) {
    Color web = Color.web(name);
    return Colour.ofHex(String.format("#%02x%02x%02x", Math.round(web.getRed() * 255), Math.round(web.getGreen() * 255), Math.round(web.getBlue() * 255)));
  }
}
