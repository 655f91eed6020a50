package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

class NothingLearntScreenTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    FinishedScarves.begin(blank);
  }

  @Test
  void whereNoPlanIsFinishedItIsSaidHowPlansTeach() {
    push(KeyCode.CONTROL, KeyCode.DIGIT5);
    settle();
    interact(() -> lookup("#what-was-learnt").query().requestFocus());
    push(KeyCode.SPACE);
    settle();
    assertThat(textOf("#learnt-said")).isEqualTo("Nothing is learnt yet.");
    assertThat(lookup("#learnt-findings").query().isVisible()).isFalse();
    assertThat(lookup(".learnt-teaching .label").<Labeled>queryAll()).extracting(Labeled::getText).anyMatch(words -> words.startsWith("Loom waste: measure "));
  }
}
