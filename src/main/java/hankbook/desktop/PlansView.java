package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.util.Objects;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The plans: the list at the left, the open plan's form, and its answer beside the form, or below where the window is narrow. */
public final class PlansView extends BorderPane {
  private static final double ROOM_FOR_BOTH = 900;

  private final PlansModel model;
  private final SplitPane open = new SplitPane();
  private final Label none = new Label("Choose a plan, or begin a new one.");

  public PlansView(PlansModel model) {
    this.model = model;
    getStyleClass().add("plans");
    getStylesheets().add(Objects.requireNonNull(PlansView.class.getResource("/hankbook/desktop/plans.css")).toExternalForm());
    setLeft(new PlanListPane(model));
    open.getStyleClass().add("plan-open");
    open.getItems().addAll(scrolled(new PlanForm(model)), answer());
    open.widthProperty().subscribe(width -> turn(width.doubleValue()));
    none.getStyleClass().add(Styles.TEXT_MUTED);
    setCenter(new StackPane(open, none));
    model.editor().nameProperty().subscribe(this::showOpen);
  }

  private Node answer() {
    ScrollPane answer = scrolled(new PlanAnswerView(model));
    VBox.setVgrow(answer, Priority.ALWAYS);
    VBox all = new VBox(answer, new PlanActBar(model));
    all.getStyleClass().add("plan-answer-side");
    return all;
  }

  /** A plan that is opened is shown from its beginning. */
  private ScrollPane scrolled(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    model.editor().nameProperty().subscribe(_ -> scroll.setVvalue(0));
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plan-scroll");
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  private void turn(double width) {
    boolean wide = width >= ROOM_FOR_BOTH;
    Orientation wanted = wide ? Orientation.HORIZONTAL : Orientation.VERTICAL;
    if (width > 0 && open.getOrientation() != wanted) {
      open.setOrientation(wanted);
      open.setDividerPositions(wide ? 0.55 : 0.48);
    }
  }

  private void showOpen(String name) {
    open.setVisible(!name.isEmpty());
    none.setVisible(name.isEmpty() && model.chosenProperty().get().isEmpty());
  }
}
