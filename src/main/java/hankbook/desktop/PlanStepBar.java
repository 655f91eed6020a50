package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanStep;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The life of the open plan: each step with its shape, its day and its yarn, and what comes next. A step that an entry made opens that entry. */
final class PlanStepBar extends VBox {
  private final PlanLifeModel life;
  private final GridPane reached = new GridPane();
  private final FlowPane toCome = new FlowPane();
  private final Label next = Labels.quiet("");

  PlanStepBar(PlanLifeModel life) {
    this.life = life;
    getStyleClass().add("step-bar");
    reached.getStyleClass().add("steps");
    toCome.getStyleClass().add("steps");
    next.setId("plan-next");
    getChildren().addAll(reached, toCome, next);
    managedProperty().bind(visibleProperty());
    life.stepsProperty().subscribe(_ -> show());
    life.opensProperty().subscribe(_ -> show());
  }

  private void show() {
    List<PlanStep> all = life.stepsProperty().get();
    setVisible(!all.isEmpty());
    reached.getChildren().clear();
    toCome.getChildren().clear();
    all.forEach(this::add);
    toCome.setManaged(!toCome.getChildren().isEmpty());
    next.setText(PlanStepWords.next(all));
    next.setManaged(!next.getText().isEmpty());
  }

  private void add(PlanStep step) {
    Labeled word = word(step);
    List<String> facts = PlanStepWords.facts(step);
    word.setAccessibleText(Say.text("{0}, {1}", word.getText(), PlanStepWords.state(step)) + (facts.isEmpty() ? "" : ": " + String.join(", ", facts)));
    switch (step.state()) {
      case DONE, NOW, LEFT_OUT -> {
        reached.addRow(reached.getRowCount(), word, quiet(step.date().map(Object::toString).orElse("")), quiet(PlanStepWords.amount(step)));
      }
      case NEXT, LATER -> toCome.getChildren().add(word);
    }
  }

  private Labeled word(PlanStep step) {
    String name = PlanStepWords.name(step.stage());
    Optional<Labeled> asked = life.opensProperty().get().filter(_ -> step.entry().isPresent()).map(opens -> asked(name, () -> opens.accept(step.entry().getAsLong())));
    Labeled word = asked.orElseGet(() -> new Label(name));
    word.setGraphic(new PlanStepMark(step.state()));
    word.setId("plan-step-" + step.stage().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    word.getStyleClass().addAll("step-word", "step-" + step.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    return word;
  }

  private static Label quiet(String fact) {
    Label quiet = Labels.quiet(fact);
    quiet.setMinWidth(USE_PREF_SIZE);
    return quiet;
  }

  private static Button asked(String name, Runnable opens) {
    Button asked = new Button(name);
    asked.getStyleClass().setAll("figure");
    asked.setAccessibleHelp(Say.text("Opens the journal at the entry that made it."));
    asked.setOnAction(_ -> opens.run());
    return asked;
  }
}
