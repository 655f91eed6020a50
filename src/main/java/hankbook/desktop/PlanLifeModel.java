package hankbook.desktop;

import hankbook.studio.PlanStep;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The life of the open plan, and the way from its steps into the journal. */
final class PlanLifeModel {
  private final PlanDesk desk;
  private final Work work;
  private final Latest latest = new Latest();
  private final Consumer<Exception> wrong;
  private final ReadOnlyObjectWrapper<List<PlanStep>> steps = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<LongConsumer>> opens = new ReadOnlyObjectWrapper<>(Optional.empty());

  PlanLifeModel(PlanDesk desk, Work work, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.wrong = wrong;
  }

  /** Every step; none while no plan is open. */
  ReadOnlyObjectProperty<List<PlanStep>> stepsProperty() {
    return steps.getReadOnlyProperty();
  }

  /** What opens an entry in the journal; empty where nothing does. */
  ReadOnlyObjectProperty<Optional<LongConsumer>> opensProperty() {
    return opens.getReadOnlyProperty();
  }

  /** Lets entries be opened. */
  void opens(LongConsumer entry) {
    opens.set(Optional.of(entry));
  }

  /** Asks the ledger how far a plan has come; none where the name is empty. */
  void follow(String plan) {
    Consumer<List<PlanStep>> told = latest.only(steps::set);
    if (plan.isEmpty()) {
      told.accept(List.of());
    } else {
      work.run(() -> desk.steps(plan), told, latest.also(wrong));
    }
  }
}
