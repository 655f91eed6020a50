package hankbook.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Unreadable;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeaveTest {
  /** Ends and intersections of a repeat after Ashenhurst's rule; shafts of a straight draft are common practice. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      plain                              | plain                              | 2 | 2 | 2
      Plain weave                        | plain                              | 2 | 2 | 2
      2/2 twill                          | 2/2 twill                          | 4 | 2 | 4
      1/2 Twill                          | 1/2 twill                          | 3 | 2 | 3
      3/1/1/3 twill                      | 3/1/1/3 twill                      | 8 | 4 | 8
      5-end satin                        | 5-end satin                        | 5 | 2 | 5
      8 end sateen                       | 8-end satin                        | 8 | 2 | 8
      6 ends, 4 intersections, 10 shafts | 6 ends, 4 intersections, 10 shafts | 6 | 4 | 10
      """)
  void aWeaveIsReadFromItsNameOrItsRepeat(String text, String name, int ends, int intersections, int shafts) {
    assertThat(Weave.parse(text)).isEqualTo(new Weave(name, ends, intersections, OptionalInt.of(shafts)));
    assertThat(Weave.parse(Weave.parse(text).toString())).isEqualTo(Weave.parse(text));
  }

  @Test
  void aRepeatThatWasCountedSaysNothingOfShaftsUnlessTold() {
    assertThat(Weave.parse("4 ends 2 intersections").shafts()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "twill", "2/2/2 twill", "0/4 twill", "1/1 twill", "4-end satin", "lace", "2/2twill on 4"})
  void whatIsNoWeaveIsRefused(String text) {
    assertThatThrownBy(() -> Weave.parse(text))
        .isInstanceOf(Unreadable.class)
        .hasMessageEndingWith("wanted a weave such as plain, 2/2 twill, 5-end satin, or 4 ends, 2 intersections");
  }

  @Test
  void aRepeatHasNoMoreIntersectionsThanEnds() {
    assertThatThrownBy(() -> Weave.parse("4 ends, 5 intersections"))
        .hasMessage("found '4 ends, 5 intersections', wanted a repeat with at least 1 intersection and no more of them than ends");
  }
}
