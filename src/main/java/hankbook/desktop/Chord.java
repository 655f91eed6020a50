package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.control.Tooltip;
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
  GUIDE("F1", new KeyCodeCombination(KeyCode.F1)),
  KEYS("Shift+F1", new KeyCodeCombination(KeyCode.F1, KeyCombination.SHIFT_DOWN));

  @SuppressWarnings("ImmutableEnumChecker") // A copy that nobody changes, of combinations that cannot be changed.
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

  /** As it is written beside what it does, with the name that the key bears on the keyboards of the language. */
  String words() {
    return words.replace("Ctrl", Say.text("Ctrl")).replace("Shift", Say.text("Shift"));
  }

  /** What it does, in a few words. */
  String does() {
    return switch (this) {
      case SHELF -> Say.text("Turn to the shelf");
      case PLANS -> Say.text("Turn to the plans");
      case JOURNAL -> Say.text("Turn to the journal");
      case AHEAD -> Say.text("Turn to what lies ahead");
      case AFTER -> Say.text("Turn to what comes after the cloth");
      case COSTS -> Say.text("Turn to the costs");
      case LOOMS -> Say.text("Turn to looms and reeds");
      case SETTINGS -> Say.text("Turn to the settings");
      case SEARCH -> Say.text("Go to where the things of this screen are looked for");
      case RECEIVE -> Say.text("Receive a skein");
      case OTHER_THEME -> Say.text("Change between light and dark");
      case LARGER -> Say.text("Show everything larger");
      case SMALLER -> Say.text("Show everything smaller");
      case OWN_SIZE -> Say.text("Show everything at its own size");
      case GUIDE -> Say.text("Open the guide at what is shown");
      case KEYS -> Say.text("Show all keys");
      case FIND_ANYTHING -> Say.text("Find a skein, a plan, a screen or something to do");
      case UNDO -> Say.text("Take back the last thing done with yarn; in a field, what was typed");
    };
  }

  /** A tip that says words and then the keys. */
  Tooltip tip(String says) {
    return new Tooltip(says + ", " + words());
  }

  /** Lets the chords do what they stand for. */
  static void on(Scene scene, Map<Chord, Runnable> acts) {
    acts.forEach((chord, act) -> chord.allKeys().forEach(keys -> scene.getAccelerators().put(keys, act)));
  }
}
