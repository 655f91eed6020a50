package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
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
    list = new ListView<>(model.plans());
    list.setId("plan-list");
    list.setAccessibleText("Plans");
    list.getStyleClass().addAll("plan-list", Styles.DENSE);
    list.setCellFactory(_ -> new PlanCell());
    list.setPlaceholder(new Label("No plan yet."));
    VBox.setVgrow(list, Priority.ALWAYS);
    list.getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (row != null) {
        model.choose(row.name());
      }
    });
    model.chosenProperty().subscribe(row -> row.ifPresentOrElse(list.getSelectionModel()::select, list.getSelectionModel()::clearSelection));
    getChildren().addAll(begin(), list);
  }

  /** Puts the keyboard into the list, upon the plan that is open. */
  void search() {
    list.requestFocus();
    model.chosenProperty().get().ifPresent(list::scrollTo);
  }

  /** Offers to begin a plan with a draft, by a button and by dropping its file here. */
  void offer(DraftModel drafts, Supplier<Optional<Path>> chooser) {
    Button from = new Button("From a draft…");
    from.setId("from-draft");
    from.setMaxWidth(Double.MAX_VALUE);
    from.setOnAction(_ -> chooser.get().ifPresent(drafts::read));
    getChildren().add(1, from);
    setOnDragOver(drag -> dropped(drag).ifPresent(_ -> drag.acceptTransferModes(TransferMode.COPY)));
    setOnDragDropped(drag -> {
      dropped(drag).ifPresent(drafts::read);
      drag.setDropCompleted(dropped(drag).isPresent());
    });
  }

  private static Optional<Path> dropped(DragEvent drag) {
    return drag.getDragboard().getFiles().stream().map(File::toPath).filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(".wif")).findFirst();
  }

  private HBox begin() {
    TextField name = new TextField();
    name.setPromptText("Name it");
    name.setAccessibleText("Name of a new plan");
    name.setId("new-plan-name");
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMinWidth(0);
    Button begin = new Button("New plan");
    begin.setId("new-plan");
    begin.setMinWidth(USE_PREF_SIZE);
    begin.setOnAction(_ -> begin(name));
    name.setOnAction(_ -> begin(name));
    HBox row = new HBox(name, begin);
    row.getStyleClass().add("plan-begin");
    return row;
  }

  private void begin(TextField name) {
    model.begin(name.getText());
    name.clear();
  }
}
