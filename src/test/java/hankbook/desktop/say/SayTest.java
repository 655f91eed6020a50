package hankbook.desktop.say;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Phrase;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SayTest {
  @AfterEach
  void speak_english_again() {
    Say.in(Language.ENGLISH);
  }

  @Test
  void english_stands_in_the_code() {
    assertThat(Say.text("Nothing is on the shelf yet.")).isEqualTo("Nothing is on the shelf yet.");
  }

  @Test
  void values_stand_where_their_numbers_do_and_are_not_read_again() {
    assertThat(Say.text("{1} of {0}, {1}", "{1}", 7)).isEqualTo("7 of {1}, 7");
  }

  @Test
  void a_brace_that_is_no_value_stays() {
    assertThat(Say.text("{name} and {0} and {", "x")).isEqualTo("{name} and x and {");
  }

  @Test
  void one_thing_is_counted_otherwise_than_none_or_two() {
    assertThat(Say.count(0, "{0} skein", "{0} skeins")).isEqualTo("0 skeins");
    assertThat(Say.count(1, "{0} skein", "{0} skeins")).isEqualTo("1 skein");
    assertThat(Say.count(2, "{0} skein of {1}", "{0} skeins of {1}", "lot 7")).isEqualTo("2 skeins of lot 7");
  }

  @Test
  void thousands_that_are_counted_stand_apart_by_a_thin_space() {
    assertThat(Say.count(104_711, "{1} of {0} entry", "{1} of {0} entries", 1000)).isEqualTo("1\u202F000 of 104\u202F711 entries");
    assertThat(Say.phrase(Phrase.count(3303, "{0} pick", "{0} picks"), Object::toString)).isEqualTo("3\u202F303 picks");
  }

  @Test
  void a_place_whose_language_is_not_spoken_gets_english() {
    assertThat(Language.of(Locale.forLanguageTag("de-AT"))).isEqualTo(Language.GERMAN);
    assertThat(Language.of(Locale.forLanguageTag("sv-FI"))).isEqualTo(Language.SWEDISH);
    assertThat(Language.of(Locale.forLanguageTag("fr-FR"))).isEqualTo(Language.ENGLISH);
  }
}
