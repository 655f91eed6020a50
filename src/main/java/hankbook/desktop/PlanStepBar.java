package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.studio.PlanStep;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The life of the open plan: each step with its shape, its day and its yarn, and what comes next. A step that an entry made opens that entry. */
final class PlanStepBar extends VBox {
  private final PlanLifeModel life;
  private final FlowPane steps = new FlowPane();
  private final Label next = Labels.quiet("");

  PlanStepBar(PlanLifeModel life) {
    this.life = life;
    getStyleClass().add("step-bar");
    steps.getStyleClass().add("steps");
    next.setId("plan-next");
    getChildren().addAll(steps, next);
    managedProperty().bind(visibleProperty());
    life.stepsProperty().subscribe(_ -> show());
    life.opensProperty().subscribe(_ -> show());
  }

  private void show() {
    List<PlanStep> all = life.stepsProperty().get();
    setVisible(!all.isEmpty());
    steps.getChildren().setAll(all.stream().map(this::step).toList());
    next.setText(PlanStepWords.next(all));
  }

  private Node step(PlanStep step) {
    String name = PlanStepWords.name(step.stage());
    Optional<Labeled> asked = life.opensProperty().get().flatMap(opens -> step.entry().map(entry -> asked(name, () -> opens.accept(entry))));
    Labeled word = asked.orElseGet(() -> new Label(name));
    word.setGraphic(new PlanStepMark(step.state()));
    word.setId("plan-step-" + step.stage().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    word.getStyleClass().addAll("step-word", "step-" + step.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    List<String> facts = PlanStepWords.facts(step);
    word.setAccessibleText(Say.text("{0}, {1}", name, PlanStepWords.state(step)) + (facts.isEmpty() ? "" : ": " + String.join(", ", facts)));
    VBox box = new VBox(word);
    box.getStyleClass().add("step");
    facts.forEach(fact -> box.getChildren().add(quiet(fact)));
    return box;
  }

  private static Label quiet(String fact) {
    Label quiet = Labels.quiet(fact);
    quiet.getStyleClass().add(Styles.TEXT_SMALL);
    quiet.setWrapText(false);
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
