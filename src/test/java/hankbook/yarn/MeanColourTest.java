package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Unreadable;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The curve between the numbers of sRGB and light is that of IEC 61966-2-1, its constants from memory; the expected values are worked out by hand from them. */
class MeanColourTest {
  @Test
  void black_and_white_make_the_grey_that_sends_half_the_light() {
    // 1.055 x 0.5^(1/2.4) - 0.055 = 0.7354, x 255 = 187.5
    assertThat(mean("#000000", "#ffffff")).isEqualTo("#bcbcbc");
  }

  @Test
  void red_and_blue_make_the_purple_that_sends_half_the_light_of_each() {
    assertThat(mean("#ff0000", "#0000ff")).isEqualTo("#bc00bc");
  }

  @Test
  void a_quarter_of_white_sends_a_quarter_of_the_light() {
    // 1.055 x 0.25^(1/2.4) - 0.055 = 0.5371, x 255 = 137.0
    assertThat(mean("#ffffff", "#000000", "#000000", "#000000")).isEqualTo("#898989");
  }

  @Test
  void very_dark_colours_lie_on_the_straight_part_of_the_curve() {
    assertThat(mean("#040404", "#080808")).isEqualTo("#060606");
  }

  @Property
  void the_mean_of_one_colour_however_often_is_that_colour(@ForAll @IntRange(max = 0xffffff) int rgb, @ForAll @IntRange(min = 1, max = 100) int times) {
    MeanColour mean = new MeanColour();
    IntStream.range(0, times).forEach(_ -> mean.add(ScreenColour.ofRgb(rgb)));
    assertThat(mean.mean()).isEqualTo(ScreenColour.ofRgb(rgb));
  }

  @Property
  void the_mean_lies_between_the_darkest_and_the_lightest(@ForAll @Size(min = 1, max = 50) List<@IntRange(max = 255) Integer> greys) {
    MeanColour mean = new MeanColour();
    greys.forEach(grey -> mean.add(new ScreenColour(grey, grey, grey)));
    assertThat(mean.mean().red()).isBetween(greys.stream().min(Integer::compare).orElseThrow(), greys.stream().max(Integer::compare).orElseThrow());
    assertThat(mean.mean().green()).isEqualTo(mean.mean().red());
  }

  @Test
  void there_is_no_mean_of_nothing() {
    assertThatThrownBy(() -> new MeanColour().mean()).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void a_colour_is_typed_by_six_digits_or_by_three_numbers() {
    for (String text : List.of("#2f5d8a", "2F5D8A", " #2F5d8a ", "47, 93, 138", "47 93 138", "47;93;138", "47,93 , 138")) {
      assertThat(ScreenColour.parse(text).hex()).as(text).isEqualTo("#2f5d8a");
    }
  }

  @Test
  void what_is_no_colour_is_refused() {
    for (String text : List.of("blue", "#2f5d8", "47, 93", "47, 93, 138, 1", "300, 0, 0", "4793138", "")) {
      assertThatThrownBy(() -> ScreenColour.parse(text)).as(text).isInstanceOf(Unreadable.class);
    }
  }

  @Property
  void what_is_printed_can_be_read_again(@ForAll @IntRange(max = 0xffffff) int rgb) {
    ScreenColour colour = ScreenColour.ofRgb(rgb);
    assertThat(ScreenColour.parse(colour.hex())).isEqualTo(colour);
    assertThat(ScreenColour.parse(colour.red() + ", " + colour.green() + ", " + colour.blue())).isEqualTo(colour);
  }

  private static String mean(String... colours) {
    MeanColour mean = new MeanColour();
    List.of(colours).forEach(colour -> mean.add(ScreenColour.parse(colour)));
    return mean.mean().hex();
  }
}
