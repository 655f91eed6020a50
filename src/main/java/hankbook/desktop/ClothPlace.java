package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.scene.input.KeyCode;

/** Which patch of a cloth is looked at closely: its first end and pick, counted from 0. It never leaves the cloth. */
final class ClothPlace {
  private final ReadOnlyLongWrapper end;
  private final ReadOnlyLongWrapper pick;
  private long ends;
  private long picks;
  private int across;
  private int along;

  ClothPlace() {
    this(0, 0);
  }

  private ClothPlace(long end, long pick) {
    this.end = new ReadOnlyLongWrapper(end);
    this.pick = new ReadOnlyLongWrapper(pick);
  }

  /** The same place, looked at by nobody yet. */
  ClothPlace again() {
    return new ClothPlace(end.get(), pick.get());
  }

  ReadOnlyLongProperty endProperty() {
    return end.getReadOnlyProperty();
  }

  ReadOnlyLongProperty pickProperty() {
    return pick.getReadOnlyProperty();
  }

  /** How many ends the patch has, at most all. */
  int across() {
    return (int) Math.min(across, ends);
  }

  /** How many picks the patch has, at most all. */
  int along() {
    return (int) Math.min(along, picks);
  }

  /**
   * Lays the patch on a cloth, where it was as far as the cloth reaches.
   *
   * @param across how many ends there is room for
   * @param along how many picks there is room for
   */
  void on(long allEnds, long allPicks, int across, int along) {
    this.ends = allEnds;
    this.picks = allPicks;
    this.across = across;
    this.along = along;
    to(end.get(), pick.get());
  }

  /** Puts the patch around an end and a pick. */
  void around(long middleEnd, long middlePick) {
    to(middleEnd - across() / 2, middlePick - along() / 2);
  }

  private void to(long firstEnd, long firstPick) {
    end.set(Math.clamp(firstEnd, 0, Math.max(0, ends - across())));
    pick.set(Math.clamp(firstPick, 0, Math.max(0, picks - along())));
  }

  /** Moves the patch by an arrow key, or by its own length; tells whether the key is one of these. */
  boolean move(KeyCode key) {
    switch (key) {
      case LEFT -> to(end.get() - 1, pick.get());
      case RIGHT -> to(end.get() + 1, pick.get());
      case UP -> to(end.get(), pick.get() - 1);
      case DOWN -> to(end.get(), pick.get() + 1);
      case PAGE_UP -> to(end.get(), pick.get() - along());
      case PAGE_DOWN -> to(end.get(), pick.get() + along());
      case HOME -> to(0, pick.get());
      case END -> to(ends, pick.get());
      default -> {
        return false;
      }
    }
    return true;
  }

  /** Where the patch lies: {@code Ends 1 to 30 of 480, picks 1 to 27 of 2160.} */
  String words() {
    long firstEnd = end.get() + 1;
    long lastEnd = end.get() + across();
    return picks == 0
        ? Say.text("Ends {0} to {1} of {2}.", firstEnd, lastEnd, ends)
        : Say.text("Ends {0} to {1} of {2}, picks {3} to {4} of {5}.", firstEnd, lastEnd, ends, pick.get() + 1, pick.get() + along(), picks);
  }
}
