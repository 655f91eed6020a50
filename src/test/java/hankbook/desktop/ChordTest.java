package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.Test;

class ChordTest {
  @Test
  void everyChordIsUnlikeTheOthers() {
    assertThat(Arrays.stream(Chord.values()).map(Chord::keys)).doesNotHaveDuplicates();
    assertThat(Arrays.stream(Chord.values()).map(Chord::words)).doesNotHaveDuplicates();
  }

  @Test
  void everyChordSaysWhatItDoes() {
    assertThat(Chord.values()).allSatisfy(chord -> assertThat(chord.does()).as(chord.name()).isNotEmpty());
    assertThat(Arrays.stream(Chord.values()).flatMap(chord -> chord.allKeys().stream())).doesNotHaveDuplicates();
  }

  @Test
  void noChordHoldsAltWhichTypesLettersOnManyKeyboards() {
    assertThat(Arrays.stream(Chord.values()).map(Chord::keys)).allMatch(keys -> keys.getAlt() == KeyCombination.ModifierValue.UP);
  }
}
