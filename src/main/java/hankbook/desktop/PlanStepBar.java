package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.studio.PlanStep;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The life of the open plan: each step with its shape, its day and its yarn, and what comes next. A step that an entry made opens that entry. */
final class PlanStepBar extends VBox {
  private final Consumer<UUID> opens;
  private final FlowPane steps = new FlowPane();
  private final Label next = Labels.quiet("");

  /**
   * The life of a plan.
   *
   * @param life every step; none where that is not known yet
   * @param opens an entry in the journal
   */
  PlanStepBar(ObservableValue<List<PlanStep>> life, Consumer<UUID> opens) {
    this.opens = opens;
    getStyleClass().add("step-bar");
    steps.getStyleClass().add("steps");
    next.setId("plan-next");
    getChildren().addAll(steps, next);
    managedProperty().bind(visibleProperty());
    life.subscribe(this::show);
  }

  private void show(List<PlanStep> life) {
    setVisible(!life.isEmpty());
    steps.getChildren().setAll(life.stream().map(this::step).toList());
    next.setText(PlanStepWords.next(life));
  }

  private Node step(PlanStep step) {
    String name = PlanStepWords.name(step.stage());
    Labeled word = step.entry().<Labeled>map(entry -> asked(name, entry)).orElseGet(() -> new Label(name));
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

  private Button asked(String name, UUID entry) {
    Button asked = new Button(name);
    asked.getStyleClass().setAll("figure");
    asked.setAccessibleHelp(Say.text("Opens the journal at the entry that made it."));
    asked.setOnAction(_ -> opens.accept(entry));
    return asked;
  }
}
