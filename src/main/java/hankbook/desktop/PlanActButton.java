package hankbook.desktop;

import java.util.Locale;
import java.util.Map;
import javafx.scene.control.Button;

/** A button for one thing that can be done with a plan, disabled while something hinders it. */
final class PlanActButton extends Button {
  private final PlanAct act;

  PlanActButton(PlanAct act, PlansModel model) {
    super(act.words());
    this.act = act;
    setId("plan-" + act.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    setMinWidth(USE_PREF_SIZE);
    setOnAction(_ -> model.act(act));
    model.acts().hindrancesProperty().subscribe(this::show);
  }

  private void show(Map<PlanAct, String> hindrances) {
    String hindrance = hindrances.getOrDefault(act, "");
    setDisable(!hindrance.isEmpty());
    setAccessibleHelp(hindrance);
    if (act == PlanAct.RESERVE_WHAT_THERE_IS || act == PlanAct.RELEASE) {
      // Reserving only a part is no choice where there is enough, nor is releasing where nothing is reserved.
      setVisible(hindrance.isEmpty());
      setManaged(hindrance.isEmpty());
    }
  }
}
