package hankbook.desktop;

import hankbook.measure.Unreadable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.scene.control.SplitPane;
import javafx.scene.input.MouseEvent;

/** Remembers where the user drew the lines between the parts of a split pane, beside each other and below each other apart. */
final class SplitMemory {
  private final SplitPane split;
  private final Remembered remembered;

  /** @param split one with an id */
  SplitMemory(SplitPane split, Remembered remembered) {
    this.split = split;
    this.remembered = remembered;
  }

  /** Restores the lines, and notes from now on where they are drawn. */
  void begin() {
    restore();
    // Whoever turns the parts then sets the lines as at first.
    split.orientationProperty().subscribe((_, _) -> Platform.runLater(this::restore));
    split.addEventFilter(MouseEvent.MOUSE_RELEASED, released -> {
      if (Pressed.within("split-pane-divider", released.getTarget())) {
        Platform.runLater(this::note);
      }
    });
  }

  /**
   * The lines of a split pane.
   *
   * @param positions as parts of the whole, from 0 to 1
   */
  record Lines(List<Double> positions) {
    Lines {
      positions = List.copyOf(positions);
      if (!positions.stream().allMatch(position -> position >= 0 && position <= 1)) {
        throw new Unreadable(positions.toString(), "parts of a whole");
      }
    }
  }

  private String key() {
    return "split " + split.getId() + " " + split.getOrientation().name().toLowerCase(Locale.ROOT);
  }

  private void restore() {
    remembered.get(key(), Lines.class).filter(lines -> lines.positions().size() == split.getDividers().size())
        .ifPresent(lines -> split.setDividerPositions(lines.positions().stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private void note() {
    remembered.put(key(), new Lines(Arrays.stream(split.getDividerPositions()).map(position -> Math.rint(position * 1000) / 1000).boxed().toList()));
  }
}
