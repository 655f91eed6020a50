package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * One kind of gear: the list, and below it the form.
 *
 * @param <T> a loom or a reed
 */
final class GearPart<T> extends VBox {
  private static final double ROW_HEIGHT = 34;

  private final GearModel<T> model;
  private final TableView<GearRow<T>> table;

  GearPart(String heading, String empty, GearModel<T> model) {
    this.model = model;
    this.table = table(empty);
    getStyleClass().add("gear-part");
    VBox.setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(Labels.heading(heading), table, form(), acts());
  }

  /** Puts the keyboard into the list. */
  void search() {
    table.requestFocus();
  }

  private TableView<GearRow<T>> table(String empty) {
    TableView<GearRow<T>> rows = new TableView<>(model.rows());
    List<TableColumn<GearRow<T>, ?>> columns = new ArrayList<>();
    model.kind().fields().forEach(field -> columns.add(column(field)));
    if (!model.kind().learntCaption().isEmpty()) {
      columns.add(learnt());
    }
    rows.getColumns().setAll(columns);
    rows.setId(model.kind().word() + "s");
    rows.setAccessibleText(model.kind().several());
    rows.setFixedCellSize(ROW_HEIGHT);
    rows.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    rows.setPlaceholder(Labels.quiet(empty));
    ChosenRow.bind(rows, model.chosenProperty(), model::choose);
    return rows;
  }

  private TableColumn<GearRow<T>, String> column(GearField field) {
    TableColumn<GearRow<T>, String> column = new TableColumn<>(field.caption());
    column.setId(TableMemory.id(field.key()));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue().text(field.key())));
    column.setSortable(false);
    column.setMinWidth(104);
    column.setPrefWidth(field.key().equals("name") ? 140 : 104);
    return column;
  }

  private TableColumn<GearRow<T>, GearRow<T>> learnt() {
    TableColumn<GearRow<T>, GearRow<T>> column = new TableColumn<>(model.kind().learntCaption());
    column.setId(TableMemory.id("learnt"));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
    column.setCellFactory(_ -> new GearLearntCell<>(model::takeOver));
    column.setSortable(false);
    column.setMinWidth(226);
    column.setPrefWidth(226);
    return column;
  }

  private Node form() {
    HBox form = new HBox();
    form.getStyleClass().add("gear-form");
    for (GearField field : model.kind().fields()) {
      FieldBox box = new FieldBox(field.caption(), field.example(), model.field(field.key()), model.message(field.key())).named(model.kind().word() + "-" + field.key()).quantityIf(field.key());
      box.field().setOnAction(_ -> model.enter());
      box.setPrefWidth(field.key().equals("name") ? 150 : 100);
      HBox.setHgrow(box, Priority.SOMETIMES);
      form.getChildren().add(box);
    }
    return form;
  }

  private Node acts() {
    String word = model.kind().word();
    ActButton enter = new ActButton("", model::enter, model.enterAct().possibleProperty(), model.enterAct().whyNotProperty()).named("enter-" + word).main();
    enter.words(model.enterWordProperty());
    Button another = new Button(Say.text("Another {0}", model.kind().words()));
    another.setId("another-" + word);
    another.setMinWidth(USE_PREF_SIZE);
    another.setOnAction(_ -> {
      model.another();
      lookup("#" + word + "-" + model.kind().fields().getFirst().key()).requestFocus();
    });
    Labels.showOnly(another, model.chosenProperty().map(row -> row.isPresent()));
    ActButton away = new ActButton(Say.text("Put away"), model::putAway, model.putAwayAct().possibleProperty(), model.putAwayAct().whyNotProperty()).named("put-away-" + word);
    Labels.showOnly(away, model.chosenProperty().map(row -> row.isPresent()));
    HBox acts = new HBox(enter, another, Labels.gap(), away);
    acts.getStyleClass().add("gear-acts");
    return acts;
  }
}
