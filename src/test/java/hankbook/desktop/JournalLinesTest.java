package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class JournalLinesTest {
  @Test
  void ofAHundredThousandEntriesOnlyTheLinesThatAreLookedAtAreMade() {
    int[] made = {0};
    JournalLines lines = JournalLines.all(100_000, number -> {
      made[0]++;
      return new JournalLine(number);
    });
    assertThat(lines).hasSize(100_000);
    assertThat(lines.get(0).number()).isEqualTo(100_000);
    assertThat(lines.get(99_999).number()).isEqualTo(1);
    assertThat(lines.place(1)).isEqualTo(99_999);
    assertThat(lines.indexOf(new JournalLine(7))).isEqualTo(99_993);
    assertThat(made[0]).isEqualTo(2);
  }

  @Test
  void newEntriesStandOnTopAndPushTheOthersDown() {
    JournalLines lines = JournalLines.all(3, JournalLine::new);
    lines.growTo(5);
    assertThat(lines).extracting(JournalLine::number).containsExactly(5L, 4L, 3L, 2L, 1L);
    assertThat(lines.place(3)).isEqualTo(2);
    assertThat(lines.place(6)).isNegative();
  }

  @Test
  void whatIsFoundTwiceStandsOnce() {
    JournalLines lines = JournalLines.found(JournalLine::new);
    lines.append(List.of(90L, 70L));
    lines.append(List.of(70L, 20L));
    lines.prepend(List.of(95L, 90L));
    assertThat(lines).extracting(JournalLine::number).containsExactly(95L, 90L, 70L, 20L);
    assertThat(lines.place(70)).isEqualTo(2);
    assertThat(lines.place(71)).isNegative();
  }
}
