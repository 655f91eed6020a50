package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TroubleWordsTest {
  @AfterEach
  void speak_english_again() {
    Say.in(Language.ENGLISH);
  }

  @Test
  void what_cannot_be_read_is_no_fault_of_the_program() {
    assertThat(PlanWords.trouble(unreadable())).isEqualTo(Status.words(unreadable())).startsWith("That cannot be read: found 'long', wanted a length");
  }

  @Test
  void what_is_wanted_is_said_in_the_language_of_the_window() {
    Say.in(Language.GERMAN);
    assertThat(PlanWords.trouble(unreadable())).doesNotContain("a length");
  }

  @Test
  void an_own_fault_sends_to_the_journal() {
    assertThat(PlanWords.trouble(new IllegalStateException("odd"))).contains("Hankbook's own: odd").contains("whether yarn was moved");
  }

  private static Unreadable unreadable() {
    try {
      return new Unreadable(Length.parse("long").toString(), "no length");
    } catch (Unreadable expected) {
      return expected;
    }
  }
}
