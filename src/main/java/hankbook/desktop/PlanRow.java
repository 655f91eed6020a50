package hankbook.desktop;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A plan in the list of plans. */
final class PlanRow {
  private final String name;
  private final ReadOnlyObjectWrapper<Standing> standing = new ReadOnlyObjectWrapper<>(Standing.RECKONING);
  private final ReadOnlyObjectWrapper<PlanLife> life = new ReadOnlyObjectWrapper<>(PlanLife.PLANNED);

  PlanRow(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  ReadOnlyObjectProperty<Standing> standingProperty() {
    return standing.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<PlanLife> lifeProperty() {
    return life.getReadOnlyProperty();
  }

  void stands(Standing now) {
    standing.set(now);
  }

  void lives(PlanLife now) {
    life.set(now);
  }
}
