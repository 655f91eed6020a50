package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.Skin;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The plans down, in their turns, and the yarns across; the plans' names stay while the yarns move sideways. */
final class AheadTable extends TableView<AheadRow> {
  private static final double PLAN_WIDTH = 190;
  private static final double YARN_WIDTH = 184;

  private final AheadModel model;
  private final DoubleProperty moved = new SimpleDoubleProperty(0);
  private final TableColumn<AheadRow, AheadRow> plan;
  private List<AheadYarn> across = List.of();
  private boolean showing;

  AheadTable(AheadModel model, Consumer<String> open) {
    this.model = model;
    plan = column(PLAN_WIDTH);
    plan.setCellFactory(_ -> new AheadPlanCell(open, moved));
    plan.setGraphic(captions());
    plan.getStyleClass().add("ahead-plan");
    getColumns().add(plan);
    setId("ahead");
    getStyleClass().add("ahead-table");
    setAccessibleText(Say.text("Plans in their turns, with their yarns"));
    setPlaceholder(nothing(model));
    getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (!showing) {
        model.choose(row == null ? "" : row.name());
      }
    });
    model.aheadProperty().subscribe(this::show);
    addEventFilter(KeyEvent.KEY_PRESSED, pressed -> press(pressed, open));
    skinProperty().subscribe(this::skinned);
  }

  private void show(Ahead ahead) {
    showing = true;
    if (!ahead.yarns().equals(across)) {
      across = ahead.yarns();
      List<TableColumn<AheadRow, ?>> columns = new ArrayList<>(List.of(plan));
      across.forEach(yarn -> columns.add(yarn(yarn)));
      getColumns().setAll(columns);
    }
    getItems().setAll(ahead.rows());
    int chosen = ahead.names().indexOf(model.chosenProperty().get());
    if (chosen < 0) {
      getSelectionModel().clearSelection();
    } else {
      getSelectionModel().clearAndSelect(chosen);
      getFocusModel().focus(chosen);
      if (lookup(".virtual-flow") instanceof VirtualFlow<?> flow) {
        flow.scrollTo(chosen);
      }
    }
    showing = false;
  }

  /** Alt with the arrows moves the chosen plan; left and right move the yarns; Enter opens the plan. */
  private void press(KeyEvent pressed, Consumer<String> open) {
    switch (pressed.getCode()) {
      case UP, DOWN -> {
        if (!pressed.isAltDown()) {
          return;
        }
        if (pressed.getCode() == KeyCode.UP) {
          model.up();
        } else {
          model.down();
        }
      }
      case LEFT -> aside(-YARN_WIDTH);
      case RIGHT -> aside(YARN_WIDTH);
      case ENTER -> {
        if (!model.chosenProperty().get().isEmpty()) {
          open.accept(model.chosenProperty().get());
        }
      }
      default -> {
        return;
      }
    }
    pressed.consume();
  }

  private void aside(double by) {
    ScrollBar bar = StayingColumn.bar(this);
    bar.setValue(Math.clamp(bar.getValue() + by, bar.getMin(), bar.getMax()));
  }

  private void skinned(Skin<?> skin) {
    if (skin != null) {
      moved.bind(StayingColumn.bar(this).valueProperty());
      holdHead();
    }
  }

  /** The heads are made anew with the columns. */
  private void holdHead() {
    for (Node head : lookupAll(".column-header")) {
      if (head.getStyleClass().contains("ahead-plan")) {
        StayingColumn.hold(head, moved);
      }
    }
  }

  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    holdHead();
  }

  private static TableColumn<AheadRow, AheadRow> column(double width) {
    TableColumn<AheadRow, AheadRow> column = new TableColumn<>();
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    column.setReorderable(false);
    return column;
  }

  private static TableColumn<AheadRow, AheadRow> yarn(AheadYarn yarn) {
    TableColumn<AheadRow, AheadRow> column = column(YARN_WIDTH);
    YarnColour asked = yarn.yarn();
    column.setCellFactory(_ -> new AheadYarnCell(asked));
    Swatch swatch = new Swatch(26, 26);
    swatch.show(yarn.hex(), asked.colour());
    Label name = new Label(asked.yarn());
    name.getStyleClass().add("ahead-yarn");
    HBox top = new HBox(swatch, new VBox(name, new Label(asked.colour())));
    top.getStyleClass().add("ahead-head-top");
    Label lack = new Label(yarn.lack().isEmpty() ? "–" : yarn.lack());
    lack.getStyleClass().add(yarn.lack().isEmpty() ? "ahead-none" : "fault");
    VBox head = new VBox(top, new Label(yarn.need()), new Label(yarn.free()), lack);
    head.getStyleClass().add("ahead-head");
    head.setAccessibleText(yarn.words());
    column.setGraphic(head);
    return column;
  }

  private static VBox captions() {
    Label top = new Label(Say.text("Plan"));
    top.getStyleClass().add("ahead-head-top");
    VBox captions = new VBox(top, new Label(Say.text("All plans need")), new Label(Say.text("Free for them")), new Label(Say.text("Lacks")));
    captions.getStyleClass().add("ahead-head");
    return captions;
  }

  private static StackPane nothing(AheadModel model) {
    Label reckoning = Labels.quiet(Say.text("The plans are being reckoned…"));
    Labels.showOnly(reckoning, model.reckoningProperty());
    VBox nothing = new VBox(
        Labels.quiet(Say.text("No plan yet. Each plan you begin under Plans stands here with the yarn it needs.")),
        Labels.quiet(Say.text("The upper plans take their yarn first; you see what is left for those below, and what lacks.")));
    nothing.getStyleClass().add("nothing-yet");
    Labels.showOnly(nothing, model.reckoningProperty().map(now -> !now));
    return new StackPane(reckoning, nothing);
  }
}
