package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.exchange.PlanDraft;
import hankbook.gear.Gear;
import hankbook.plan.Plan;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;

/** What finished plans and its loom propose for the allowances of the open plan. It follows the plan's answer; while the plan is unfinished, what was proposed last stays. */
final class PlanOffers {
  private final PlanDesk desk;
  private final Work work;
  private final PlanEditor editor;
  private final ObservableValue<Gear> gear;
  private final Consumer<Exception> wrong;
  private final Latest latest = new Latest();
  private final ReadOnlyObjectWrapper<List<PlanOffer>> offers = new ReadOnlyObjectWrapper<>(List.of());

  PlanOffers(PlanDesk desk, Work work, PlanEditor editor, ObservableValue<Gear> gear, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.editor = editor;
    this.gear = gear;
    this.wrong = wrong;
    editor.openedProperty().subscribe(_ -> forget());
    // An answer may be the same to a draft that says it otherwise.
    editor.reckoningProperty().subscribe(reckoning -> {
      if (!reckoning) {
        ask();
      }
    });
    gear.subscribe(_ -> ask());
  }

  /** One for each allowance for which there is something to propose. */
  ReadOnlyObjectProperty<List<PlanOffer>> offersProperty() {
    return offers.getReadOnlyProperty();
  }

  /** What was proposed for the plan before is none for this one. */
  private void forget() {
    latest.<List<PlanOffer>>only(offers::set).accept(List.of());
  }

  private void ask() {
    if (editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check)) {
      ask(check.plan());
    }
  }

  private void ask(Plan plan) {
    PlanDraft draft = editor.draftProperty().get();
    Gear known = gear.getValue();
    work.run(() -> PlanOffer.of(desk.offers(plan), plan, draft, known), latest.only(offers::set), latest.also(wrong));
  }

  /** Enters what is proposed into its field. */
  void use(PlanOffer offer) {
    editor.enter(offer.field(), offer.text());
    editor.keep();
  }
}
