package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.plan.WorkKind;
import hankbook.studio.ToFinish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The form for a plan whose cloth is cut off, in steps from the skeins to the note. */
final class AfterForm extends VBox {
  private static final double FIELD = 150;
  private static final double HOURS = 92;

  private final AfterEditor editor;
  private final List<Consumer<ActualsDraft>> shown = new ArrayList<>();
  private Optional<ToFinish> built = Optional.empty();
  private List<String> structure = List.of();

  AfterForm(AfterEditor editor) {
    this.editor = editor;
    getStyleClass().add("plan-form");
    editor.groundProperty().subscribe(_ -> show());
    editor.draftProperty().subscribe(_ -> show());
  }

  /** Built anew only where rows come or go, so that typing is never disturbed. */
  private void show() {
    ActualsDraft draft = editor.draftProperty().get();
    Optional<ToFinish> ground = editor.groundProperty().get();
    if (ground.isEmpty()) {
      return;
    }
    List<String> now = structure(draft);
    if (ground.equals(built) && now.equals(structure)) {
      shown.forEach(part -> part.accept(draft));
    } else {
      built = ground;
      structure = now;
      build(ground.get(), draft);
    }
  }

  private static List<String> structure(ActualsDraft draft) {
    List<String> rows = new ArrayList<>(draft.rows(ActualsPart.LEFTOVERS).stream().map(FoundRows::code).toList());
    rows.add(draft.rows(ActualsPart.THRUMS).size() + " " + draft.rows(ActualsPart.SAMPLES).size());
    return rows;
  }

  private void build(ToFinish ground, ActualsDraft draft) {
    shown.clear();
    List<Node> steps = new ArrayList<>();
    FoundSkeins skeins = new FoundSkeins(editor, ground, draft);
    shown.add(skeins::show);
    steps.add(step(Say.text("1. What is left of each skein"), Say.text("All that is still wound on it, with what never left the shelf."), skeins));
    FoundBundles bundles = new FoundBundles(editor, ground, draft);
    shown.add(bundles::show);
    steps.add(step(Say.text("2. Thrums and samples"), Say.text("Weighed or measured; what you leave blank counts as woven."), bundles));
    steps.add(step(Say.text("3. The warp and the cloth"), Say.text("As far as you measured; what is left blank is taken as planned."), measured(ground)));
    steps.add(step(Say.text("4. Hours"), Say.text("What each kind of work took in all, such as 1:30, 1.5 h or 90 min."), hours()));
    steps.add(step(Say.text("5. Note and date"), "", box(ActualsPart.ACTUALS, 1, "date", Say.text("Cut off on"), Say.text("Cut off on"), "today", FIELD),
        new FoundNote(editor, "note", Say.text("Note"), Say.text("what to remember of this cloth"), 3)));
    getChildren().setAll(steps);
  }

  private static VBox step(String heading, String help, Node... nodes) {
    VBox step = new VBox(Labels.heading(heading));
    step.getStyleClass().add("plan-group");
    if (!help.isEmpty()) {
      step.getChildren().add(Labels.quiet(help));
    }
    step.getChildren().addAll(nodes);
    return step;
  }

  private FoundBox box(ActualsPart part, int row, String key, String caption, String name, String prompt, double width) {
    FoundBox box = new FoundBox(editor, part, row, key, caption, name, prompt, width);
    shown.add(box::show);
    return box;
  }

  private Node[] measured(ToFinish ground) {
    List<Node> rows = new ArrayList<>();
    for (FoundField field : FoundField.values()) {
      FoundBox box = box(field.part(), 1, field.key(), field.caption(), field.caption(), field.prompt(ground.plan()), FIELD).withoutMessage();
      Label help = box.help(field.help());
      HBox.setHgrow(help, Priority.ALWAYS);
      HBox row = new HBox(box, help);
      row.getStyleClass().add("found-measure");
      rows.add(row);
    }
    return rows.toArray(Node[]::new);
  }

  private Node hours() {
    FlowPane hours = new FlowPane();
    hours.getStyleClass().add("plan-tried");
    for (WorkKind kind : WorkKind.values()) {
      String caption = AfterWords.begin(Say.known(kind.key()));
      hours.getChildren().add(box(ActualsPart.HOURS, 1, kind.key(), caption, caption, "1:30", HOURS));
    }
    return hours;
  }
}
