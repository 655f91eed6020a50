package hankbook.desktop;

import hankbook.allot.PlanCheck;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A plan in the list of plans. */
final class PlanRow {
  private final String name;
  private final ReadOnlyObjectWrapper<Standing> standing = new ReadOnlyObjectWrapper<>(Standing.RECKONING);
  private final ReadOnlyObjectWrapper<PlanLife> life = new ReadOnlyObjectWrapper<>(PlanLife.PLANNED);

  private List<String> yarns = List.of();

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

  /** Its yarns, by which it is found too; none until it was reckoned. */
  List<String> yarns() {
    return yarns;
  }

  void stands(PlanAnswer answer) {
    if (answer instanceof PlanAnswer.Reckoned(PlanCheck check)) {
      yarns = check.covers().stream().map(cover -> cover.yarn().toString()).toList();
    }
    standing.set(answer.standing());
  }

  void lives(PlanLife now) {
    life.set(now);
  }
}
