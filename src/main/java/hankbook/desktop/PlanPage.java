package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** One of the pages beside a plan's form. It is filled anew with every answer, and only while it is to be seen, so that no hidden page costs time. */
abstract class PlanPage extends VBox {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final String id;
  private final String name;
  private final PlansModel model;
  private final List<Node> standing = new ArrayList<>();

  /**
   * A page.
   *
   * @param id what it is known by, whatever the language
   * @param name what it is called
   */
  PlanPage(String id, String name, PlansModel model) {
    this.id = id;
    this.name = name;
    this.model = model;
    getStyleClass().add("plan-answer");
    setFillWidth(true);
    setVisible(false);
    managedProperty().bind(visibleProperty());
    visibleProperty().subscribe(_ -> show());
    model.editor().answerProperty().subscribe(_ -> show());
    model.skeinsProperty().subscribe(_ -> show());
    model.editor().reckoningProperty().subscribe(reckoning -> pseudoClassStateChanged(STALE, reckoning));
  }

  /** What the page is known by. */
  final String id() {
    return id;
  }

  /** What the page is called where it is chosen. */
  final String name() {
    return name;
  }

  final PlansModel model() {
    return model;
  }

  final YarnPalette palette() {
    return YarnPalette.of(model.skeinsProperty().get());
  }

  /** Adds what stays as it is from one answer to the next, so that typing in it is never disturbed. */
  final void stands(Node... nodes) {
    standing.addAll(List.of(nodes));
    getChildren().addAll(nodes);
  }

  private void show() {
    getChildren().retainAll(standing);
    if (isVisible() && model.editor().answerProperty().get() instanceof PlanAnswer.Reckoned reckoned) {
      fill(reckoned);
    }
  }

  /** Shows an answer on the page, below what stands there. */
  abstract void fill(PlanAnswer.Reckoned reckoned);

  /** Adds a part with a heading, unless there is nothing in it. */
  static void section(VBox column, String title, Node... nodes) {
    section(column, new Label(title), nodes);
  }

  /** Adds a part with a heading, unless there is nothing in it. */
  static void section(VBox column, Label heading, Node... nodes) {
    if (nodes.length == 0) {
      return;
    }
    heading.getStyleClass().addAll(Styles.TEXT_BOLD, "plan-heading");
    VBox section = new VBox(heading);
    section.getStyleClass().add("plan-section");
    section.getChildren().addAll(nodes);
    column.getChildren().add(section);
  }

  static Label text(String words, String styleClass) {
    Label label = new Label(words);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    return label;
  }
}
