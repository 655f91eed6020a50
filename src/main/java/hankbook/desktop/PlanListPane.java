package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every plan with how it stands, and a way to begin one more. */
final class PlanListPane extends VBox {
  private final PlansModel model;
  private final ListView<PlanRow> list;

  PlanListPane(PlansModel model) {
    this.model = model;
    getStyleClass().add("plan-list-pane");
    list = new ListView<>(model.list().shown());
    list.setId("plan-list");
    list.setAccessibleText(Say.text("Plans"));
    list.getStyleClass().addAll("plan-list", Styles.DENSE);
    list.setCellFactory(_ -> new PlanCell());
    list.setPlaceholder(nothing());
    VBox.setVgrow(list, Priority.ALWAYS);
    list.getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (row != null && !model.list().listingProperty().get()) {
        model.choose(row.name());
      }
    });
    model.chosenProperty().subscribe(_ -> select());
    model.list().listingProperty().subscribe(listing -> {
      if (!listing) {
        select();
      }
    });
    getChildren().addAll(begin(), nearly(), new PlanSearch(model.list(), this::search), list, squared());
  }

  /** The plan that is open, where it is listed. */
  private void select() {
    Optional<PlanRow> row = model.chosenProperty().get().filter(model.list().shown()::contains);
    row.ifPresentOrElse(list.getSelectionModel()::select, list.getSelectionModel()::clearSelection);
  }

  /** What is said where none is listed. */
  private Label nothing() {
    Label nothing = Labels.quiet("");
    nothing.textProperty().bind(model.list().wordsProperty().map(words -> words.isBlank() ? Say.text("No plan yet.") : Say.text("No plan has these words.")));
    return nothing;
  }

  /** Squared plans are folded away until they are asked for. */
  private ToggleButton squared() {
    ToggleButton squared = new ToggleButton();
    squared.setId("plan-squared");
    squared.getStyleClass().addAll(Styles.FLAT, Styles.SMALL);
    squared.setMaxWidth(Double.MAX_VALUE);
    squared.selectedProperty().bindBidirectional(model.list().withSquaredProperty());
    squared.textProperty().bind(Bindings.createStringBinding(this::squaredWords, model.list().squaredProperty(), squared.selectedProperty()));
    Labels.showOnly(squared, model.list().squaredProperty().map(count -> count.intValue() > 0));
    return squared;
  }

  private String squaredWords() {
    int count = model.list().squaredProperty().get();
    return model.list().withSquaredProperty().get() ? Say.text("Hide what is squared") : Say.count(count, "▸ {0} squared plan", "▸ {0} squared plans");
  }

  /** Asks which plan is meant where a name is like that of another. */
  private VBox nearly() {
    PlanBeginning beginning = model.beginning();
    Label words = Labels.quiet("");
    words.setId("plan-nearly");
    words.textProperty().bind(beginning.nearlyProperty().map(nearly -> nearly.map(PlanBeginning.Nearly::words).orElse("")));
    Button that = small("plan-nearly-open", Say.text("Open that one"), beginning::openThat);
    Button both = small("plan-nearly-begin", Say.text("Begin it all the same"), beginning::beginAllTheSame);
    VBox nearly = new VBox(6, words, that, both);
    Labels.showOnly(nearly, beginning.nearlyProperty().map(Optional::isPresent));
    return nearly;
  }

  private static Button small(String id, String words, Runnable doing) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().add(Styles.SMALL);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setWrapText(true);
    button.setOnAction(_ -> doing.run());
    return button;
  }

  /** Puts the keyboard into the list, upon the plan that is open. */
  void search() {
    list.requestFocus();
    model.chosenProperty().get().ifPresent(list::scrollTo);
  }

  /** Offers to begin a plan with a draft, by a button and by dropping its file here. */
  void offer(DraftModel drafts, Supplier<Optional<Path>> chooser) {
    Button from = new Button(Say.text("From a draft…"));
    from.setId("from-draft");
    from.setMaxWidth(Double.MAX_VALUE);
    from.setOnAction(_ -> chooser.get().ifPresent(drafts::read));
    getChildren().add(2, from);
  }

  private HBox begin() {
    TextField name = new TextField();
    name.setPromptText(Say.text("Name it"));
    name.setAccessibleText(Say.text("Name of a new plan"));
    name.setId("new-plan-name");
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMinWidth(0);
    Button begin = new Button(Say.text("New plan"));
    begin.setId("new-plan");
    begin.setMinWidth(USE_PREF_SIZE);
    begin.setOnAction(_ -> begin(name));
    // Enter held a little long comes twice, the second time upon an empty field.
    name.setOnAction(_ -> {
      if (!name.getText().isBlank()) {
        begin(name);
      }
    });
    HBox row = new HBox(name, begin);
    row.getStyleClass().add("plan-begin");
    return row;
  }

  private void begin(TextField name) {
    model.begin(name.getText());
    name.clear();
  }
}
