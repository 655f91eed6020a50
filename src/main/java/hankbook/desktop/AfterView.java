package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** After the cloth: the plans at the left, and of the chosen one the form for what is found, or where its yarn went. */
public final class AfterView extends BorderPane {
  private static final double ROOM_FOR_BOTH = 840;

  private final AfterModel model;
  private final AfterListPane list;
  private final VBox form;
  private final SquaredPage squared;
  private final LearntPage learnt;
  private final VBox nothing = new VBox();
  private Optional<Orientation> turned = Optional.empty();

  public AfterView(AfterModel model) {
    this.model = model;
    this.list = new AfterListPane(model);
    this.form = form();
    this.squared = new SquaredPage(model);
    this.learnt = new LearntPage(model.learnt());
    getStyleClass().add("plans");
    List.of("plans.css", "after.css").forEach(sheet -> getStylesheets().add(Objects.requireNonNull(AfterView.class.getResource("/hankbook/desktop/" + sheet)).toExternalForm()));
    nothing.getStyleClass().add("after-nothing");
    setLeft(list);
    setCenter(new StackPane(nothing, squared, form, learnt));
    model.editor().groundProperty().subscribe(_ -> show());
    model.squared().seenProperty().subscribe(_ -> show());
    model.chosenProperty().subscribe(_ -> show());
    model.knownProperty().subscribe(_ -> show());
    model.learnt().openProperty().subscribe(_ -> show());
  }

  /**
   * Lets the records of finished plans be saved.
   *
   * @param chooser asks the user for a file, beginning with a name for it
   */
  void offer(Function<String, Optional<Path>> chooser) {
    squared.offer(chooser);
  }

  /** Puts the keyboard into the list of plans. */
  public void search() {
    list.search();
  }

  private void show() {
    boolean filling = model.editor().groundProperty().get().isPresent();
    boolean seen = model.squared().seenProperty().get().isPresent();
    boolean looking = model.learnt().openProperty().get();
    learnt.setVisible(looking);
    form.setVisible(filling && !looking);
    squared.setVisible(!filling && seen && !looking);
    nothing.setVisible(!filling && !seen && !looking);
    nothing.getChildren().setAll(model.chosenProperty().get().isPresent() || !model.knownProperty().get() ? List.of() : teaching());
  }

  private List<Node> teaching() {
    boolean waiting = model.rows().stream().anyMatch(row -> !row.isSquared());
    String first = waiting
        ? Say.text("Choose a plan at the left: one on the loom to square its book, a squared one to see where its yarn went.")
        : model.rows().isEmpty()
            ? Say.text("No plan is on a loom. Reserve a plan's yarn and draw it on the screen Plans; once its cloth is cut off, its book is squared here.")
            : Say.text("Choose a squared plan at the left to see where its yarn went. No plan is on a loom now. "
                + "Reserve a plan's yarn and draw it on the screen Plans; once its cloth is cut off, its book is squared here.");
    return List.of(
        Labels.heading(Say.text("What this is for")), text(first),
        text(Say.text("When a cloth is cut off, weigh or measure what is left of each skein that was drawn. What came back is put on the "
            + "shelf again, what was woven, thrown away as thrums or used in "
            + "samples is written down, and the loom comes out empty.")),
        text(Say.text("Measure what you can of warp and cloth beside. The screen then says where the yarn went, what take-up, draw-in and "
            + "shrinkage really were, and what nothing explains.")));
  }

  private static Label text(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMaxWidth(560);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private VBox form() {
    AfterEditor editor = model.editor();
    SplitPane split = new SplitPane(scrolled(editor, new AfterForm(editor)), answer(editor));
    split.setId("after-split");
    split.getStyleClass().add("plan-open");
    split.widthProperty().subscribe(width -> turn(split, width.doubleValue()));
    VBox.setVgrow(split, Priority.ALWAYS);
    return new VBox(head(editor), split);
  }

  private Node head(AfterEditor editor) {
    Label title = Labels.heading("");
    title.setId("after-title");
    title.textProperty().bind(editor.groundProperty().map(ground -> ground.map(open -> open.isSquared()
        ? Say.text("Finish again: {0}", open.plan().name())
        : Say.text("Cut off: {0}", open.plan().name())).orElse("")));
    Button back = new Button(Say.text("Leave it as it is"));
    back.setId("leave-form");
    back.setOnAction(_ -> model.leaveForm());
    Labels.showOnly(back, editor.groundProperty().map(ground -> ground.filter(open -> open.isSquared()).isPresent()));
    HBox head = new HBox(title, Labels.gap(), back);
    head.getStyleClass().add("after-head");
    return head;
  }

  private static Node answer(AfterEditor editor) {
    ScrollPane preview = scrolled(editor, new AfterPreviewPane(editor));
    VBox.setVgrow(preview, Priority.ALWAYS);
    FieldBox again = new FieldBox(Say.text("Why it is finished again"), Say.text("a skein was weighed wrongly"), editor.whyAgainProperty(),
        new SimpleStringProperty("")).named("why-again");
    Labels.showOnly(again, editor.groundProperty().map(ground -> ground.filter(open -> open.isSquared()).isPresent()));
    ActButton square = new ActButton(Say.text("Square the book"), editor::square, editor.act().possibleProperty(), editor.act().whyNotProperty()).named("square").main().belowReason();
    VBox acts = new VBox(again, square);
    acts.getStyleClass().add("plan-acts");
    acts.setMinHeight(USE_PREF_SIZE);
    VBox all = new VBox(preview, acts);
    all.getStyleClass().add("plan-answer-side");
    return all;
  }

  /** A form that is opened is shown from its beginning. */
  private static ScrollPane scrolled(AfterEditor editor, Node content) {
    ScrollPane scroll = new ScrollPane(content);
    editor.groundProperty().subscribe(_ -> scroll.setVvalue(0));
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plan-scroll");
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  private void turn(SplitPane split, double width) {
    boolean wide = width >= ROOM_FOR_BOTH;
    Orientation wanted = wide ? Orientation.HORIZONTAL : Orientation.VERTICAL;
    if (width > 0 && !turned.equals(Optional.of(wanted))) {
      turned = Optional.of(wanted);
      split.setOrientation(wanted);
      split.setDividerPositions(wide ? 0.56 : 0.55);
    }
  }
}
