package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
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
  private final PlanListPane list;
  private final PlanForm form;
  private final SplitPane open = new SplitPane();
  private Optional<Orientation> turned = Optional.empty();
  private final Label none = new Label();
  private final StackPane centre = new StackPane(open, none);
  private final BooleanProperty bringingIn = new SimpleBooleanProperty(false);

  public PlansView(PlansModel model) {
    this.model = model;
    this.list = new PlanListPane(model);
    this.form = new PlanForm(model);
    getStyleClass().add("plans");
    getStylesheets().add(Objects.requireNonNull(PlansView.class.getResource("/hankbook/desktop/plans.css")).toExternalForm());
    setLeft(list);
    open.setId("plan-split");
    open.getStyleClass().add("plan-open");
    open.getItems().addAll(scrolled(form), answer());
    open.widthProperty().subscribe(width -> turn(width.doubleValue()));
    none.getStyleClass().addAll(Styles.TEXT_MUTED, "plan-none");
    none.setWrapText(true);
    model.acts().saidProperty().subscribe(said -> none.setText((said.text() + " Choose a plan, or begin a new one.").strip()));
    VBox.setVgrow(centre, Priority.ALWAYS);
    BesideView beside = new BesideView(model);
    Labels.showOnly(beside, model.beside().openProperty());
    centre.getChildren().add(beside);
    model.beside().openProperty().subscribe(_ -> showOpen());
    setCenter(new VBox(new PlanConflictBar(model), centre));
    model.editor().nameProperty().subscribe(_ -> showOpen());
    model.chosenProperty().subscribe(_ -> showOpen());
    model.chosenProperty().subscribe((_, _) -> model.beside().close());
  }

  /**
   * Lets drafts be brought in, each of which is shown in the place of the open plan until it is one itself.
   *
   * @param chooser asks the user for a file
   */
  void offer(DraftModel drafts, Supplier<Optional<Path>> chooser) {
    DraftView view = new DraftView(drafts);
    Labels.showOnly(view, bringingIn);
    centre.getChildren().add(view);
    list.offer(drafts, chooser);
    bringingIn.bind(drafts.openProperty());
    bringingIn.subscribe(_ -> showOpen());
    model.chosenProperty().subscribe(_ -> drafts.close());
  }

  /**
   * Lets the steps in the life of a plan be opened in the journal.
   *
   * @param journal shows the entry with a number
   */
  public void opensEntries(LongConsumer journal) {
    model.life().opens(journal);
  }

  /** Puts the keyboard into the list of plans. */
  public void search() {
    list.search();
  }

  /** Takes a name that was typed and not left yet; tells whether that is the plan's name then. */
  boolean commit() {
    return form.commitName();
  }

  private Node answer() {
    List<PlanPage> pages = List.of(new PlanAnswerView(model), new ClothPage(model), new SettPage(model), new WindingPage(model), new CostPage(model));
    ScrollPane answer = scrolled(new PlanPages(model, pages));
    VBox.setVgrow(answer, Priority.ALWAYS);
    VBox all = new VBox(answer, new PlanActBar(model));
    all.getStyleClass().add("plan-answer-side");
    return all;
  }

  /** A plan that is opened is shown from its beginning. */
  private ScrollPane scrolled(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    model.editor().openedProperty().subscribe(_ -> scroll.setVvalue(0));
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plan-scroll");
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  private void turn(double width) {
    boolean wide = width >= ROOM_FOR_BOTH;
    Orientation wanted = wide ? Orientation.HORIZONTAL : Orientation.VERTICAL;
    if (width > 0 && !turned.equals(Optional.of(wanted))) {
      turned = Optional.of(wanted);
      open.setOrientation(wanted);
      open.setDividerPositions(wide ? 0.54 : 0.48);
    }
  }

  private void showOpen() {
    String name = model.editor().nameProperty().get();
    boolean covered = bringingIn.get() || model.beside().openProperty().get();
    open.setVisible(!name.isEmpty() && !covered);
    none.setVisible(!covered && name.isEmpty() && model.chosenProperty().get().isEmpty());
  }
}
