package hankbook.desktop;

import java.util.List;
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
  FIND_ANYTHING(KeyCode.K, "Ctrl+K"),
  UNDO(KeyCode.Z, "Ctrl+Z"),
  RECEIVE(KeyCode.R, "Ctrl+R"),
  OTHER_THEME(KeyCode.T, "Ctrl+T"),
  LARGER("Ctrl++", anyShift(KeyCode.PLUS), anyShift(KeyCode.EQUALS), anyShift(KeyCode.ADD)),
  SMALLER("Ctrl+-", anyShift(KeyCode.MINUS), anyShift(KeyCode.SUBTRACT)),
  OWN_SIZE("Ctrl+0", anyShift(KeyCode.DIGIT0), anyShift(KeyCode.NUMPAD0)),
  KEYS("Shift+F1", new KeyCodeCombination(KeyCode.F1, KeyCombination.SHIFT_DOWN));

  private final List<KeyCombination> keys;
  private final String words;

  Chord(KeyCode key, String words) {
    this(words, new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN));
  }

  /** A chord whose character lies on another key, or above another, from layout to layout. */
  Chord(String words, KeyCombination... keys) {
    this.keys = List.of(keys);
    this.words = words;
  }

  private static KeyCombination anyShift(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_ANY);
  }

  /** The keys; where there are several, the first are those that stand in the words. */
  KeyCombination keys() {
    return keys.getFirst();
  }

  /** All keys that do the same. */
  List<KeyCombination> allKeys() {
    return keys;
  }

  /** As it is written beside what it does. */
  String words() {
    return words;
  }

  /** Lets the chords do what they stand for. */
  static void on(Scene scene, Map<Chord, Runnable> acts) {
    acts.forEach((chord, act) -> chord.allKeys().forEach(keys -> scene.getAccelerators().put(keys, act)));
  }
}
