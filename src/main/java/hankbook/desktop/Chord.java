package hankbook.desktop;

import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** The keys that work everywhere in the window. */
enum Chord {
  SHELF(KeyCode.DIGIT1, "Ctrl+1"),
  PLANS(KeyCode.DIGIT2, "Ctrl+2"),
  JOURNAL(KeyCode.DIGIT3, "Ctrl+3"),
  AHEAD(KeyCode.DIGIT4, "Ctrl+4"),
  AFTER(KeyCode.DIGIT5, "Ctrl+5"),
  COSTS(KeyCode.DIGIT6, "Ctrl+6"),
  LOOMS(KeyCode.DIGIT7, "Ctrl+7"),
  SETTINGS(KeyCode.DIGIT8, "Ctrl+8"),
  SEARCH(KeyCode.F, "Ctrl+F"),
  RECEIVE(KeyCode.R, "Ctrl+R"),
  OTHER_THEME(KeyCode.T, "Ctrl+T");

  private final KeyCode key;
  private final String words;

  Chord(KeyCode key, String words) {
    this.key = key;
    this.words = words;
  }

  KeyCombination keys() {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }

  /** As it is written beside what it does. */
  String words() {
    return words;
  }

  /** Lets the chords do what they stand for. */
  static void on(Scene scene, Map<Chord, Runnable> acts) {
    acts.forEach((chord, act) -> scene.getAccelerators().put(chord.keys(), act));
  }
}
