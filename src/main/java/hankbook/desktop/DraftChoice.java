package hankbook.desktop;

import hankbook.exchange.WeaveUse;
import java.util.List;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The yarn for one colour of a draft in its warp or its weft: proposed at first, until the weaver takes it or chooses another. */
final class DraftChoice {
  private final String mark;
  private final WeaveUse use;
  private final int threads;
  private final List<DraftYarn> yarns;
  private final ReadOnlyObjectWrapper<DraftYarn> yarn;
  private final ReadOnlyBooleanWrapper taken = new ReadOnlyBooleanWrapper(false);

  /**
   * @param mark of the colour
   * @param threads ends or picks of the colour
   * @param yarns that may be taken, the nearest first; at least one
   */
  DraftChoice(String mark, WeaveUse use, int threads, List<DraftYarn> yarns) {
    this.mark = mark;
    this.use = use;
    this.threads = threads;
    this.yarns = List.copyOf(yarns);
    this.yarn = new ReadOnlyObjectWrapper<>(yarns.getFirst());
  }

  String mark() {
    return mark;
  }

  WeaveUse use() {
    return use;
  }

  int threads() {
    return threads;
  }

  List<DraftYarn> yarns() {
    return yarns;
  }

  ReadOnlyObjectProperty<DraftYarn> yarnProperty() {
    return yarn.getReadOnlyProperty();
  }

  /** Whether it is no mere proposal any more. */
  ReadOnlyBooleanProperty takenProperty() {
    return taken.getReadOnlyProperty();
  }

  /** Chooses one, which takes it too. */
  void choose(DraftYarn other) {
    yarn.set(other);
    taken.set(true);
  }

  /** Takes the one that is proposed. */
  void take() {
    taken.set(true);
  }
}
