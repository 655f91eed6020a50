package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.Fault;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The fields of the open plan, in groups. Rebuilt only where rows come or go, so that typing is never disturbed. */
final class PlanForm extends VBox {
  private final PlansModel model;
  private final PlanEditor editor;
  private final TextField name = new TextField();
  private final Map<PlanField, PlanFieldBox> boxes = new HashMap<>();
  private final Map<PlanField, Label> messages = new HashMap<>();
  private final PlanActButton putAway;
  private String shape = "";

  PlanForm(PlansModel model) {
    this.model = model;
    this.editor = model.editor();
    getStyleClass().add("plan-form");
    name.getStyleClass().addAll(Styles.TITLE_3, "plan-name");
    name.setId("plan-name");
    HBox.setHgrow(name, Priority.ALWAYS);
    putAway = new PlanActButton(PlanAct.PUT_AWAY, model);
    putAway.getStyleClass().add(Styles.FLAT);
    name.setAccessibleText("Name of the plan");
    name.setOnAction(_ -> model.rename(name.getText()));
    name.focusedProperty().subscribe(focused -> {
      if (!focused && !editor.nameProperty().get().isEmpty()) {
        model.rename(name.getText());
      }
    });
    editor.nameProperty().subscribe(name::setText);
    editor.nameProperty().subscribe(_ -> show());
    editor.draftProperty().subscribe(_ -> show());
    editor.removedProperty().subscribe(_ -> show());
    editor.answerProperty().subscribe(_ -> tell());
  }

  /** Takes the name as it is typed; tells whether the plan can bear it. */
  boolean commitName() {
    return editor.nameProperty().get().isEmpty() || model.rename(name.getText());
  }

  private void show() {
    PlanDraft draft = editor.draftProperty().get();
    String now = (editor.nameProperty().get().isEmpty() ? "none" : editor.openedProperty().get()) + shape(draft) + removed();
    if (now.equals(shape)) {
      boxes.forEach((field, box) -> box.show(draft.text(field)));
      return;
    }
    shape = now;
    boxes.clear();
    messages.clear();
    getChildren().clear();
    if (!editor.nameProperty().get().isEmpty()) {
      build();
      tell();
    }
  }

  private String removed() {
    return editor.removedProperty().get().map(gone -> gone.part() + " " + gone.row()).orElse("");
  }

  private static String shape(PlanDraft draft) {
    StringBuilder shape = new StringBuilder();
    for (PlanPart part : PlanPart.values()) {
      shape.append('\n').append(draft.rows(part).size());
    }
    return shape.toString();
  }

  private void build() {
    HBox head = new HBox(name, putAway);
    head.getStyleClass().add("plan-head");
    getChildren().addAll(head, message(PlanField.of(PlanPart.PLAN, "")));
    group("Pieces", list(PlanPart.PIECES, "Add a piece"));
    group("Warp", single(PlanPart.WARP, List.of("sett", "selvedgeEnds", "endsMultiple", "ends", "length")));
    group("Order of ends", list(PlanPart.ORDER, "Add to the order"));
    group("Weft", list(PlanPart.WEFT, "Add a weft"));
    group("Allowances", single(PlanPart.ALLOWANCES, PlanPart.ALLOWANCES.keys()));
    group("Winding", single(PlanPart.WINDING, PlanPart.WINDING.keys()));
    group("Ends counted in units", unitFields());
  }

  private VBox unitFields() {
    VBox fields = single(PlanPart.WARP, List.of("endsPerUnit"));
    fields.getChildren().add(list(PlanPart.SECTIONS, "Add a section"));
    return fields;
  }

  private void group(String title, VBox fields) {
    Label heading = new Label(title);
    heading.getStyleClass().addAll(Styles.TEXT_BOLD, "plan-heading");
    VBox group = new VBox(heading, fields);
    group.getStyleClass().add("plan-group");
    getChildren().add(group);
  }

  private VBox single(PlanPart part, List<String> keys) {
    VBox fields = new VBox(new PlanFieldRow(part, 1, keys, this::box));
    fields.getStyleClass().add("plan-rows");
    if (!messages.containsKey(PlanField.of(part, ""))) {
      fields.getChildren().add(message(PlanField.of(part, "")));
    }
    return fields;
  }

  private VBox list(PlanPart part, String more) {
    VBox rows = new VBox();
    rows.getStyleClass().add("plan-rows");
    int last = editor.draftProperty().get().rows(part).size();
    for (int row = 1; row <= last; row++) {
      putBack(part, row, rows);
      PlanFieldRow fields = new PlanFieldRow(part, row, part.keys(), this::box);
      fields.removable(part, row, editor);
      rows.getChildren().addAll(fields, message(new PlanField(part, row, "")));
    }
    putBack(part, last + 1, rows);
    rows.getChildren().add(PlanFieldRow.more(part, more, () -> add(part)));
    return rows;
  }

  private void putBack(PlanPart part, int row, VBox rows) {
    editor.removedProperty().get().filter(gone -> gone.part() == part && gone.row() == row).ifPresent(_ -> rows.getChildren().add(PlanFieldRow.putBack(part, row, editor)));
  }

  private void add(PlanPart part) {
    editor.addRow(part);
    Optional.ofNullable(boxes.get(new PlanField(part, editor.draftProperty().get().rows(part).size(), part.keys().get(0)))).ifPresent(PlanFieldBox::focus);
  }

  private PlanFieldBox box(PlanField field) {
    double width = PlanFieldRow.width(field);
    PlanFieldBox box =
        switch (field.key()) {
          case "yarn" -> PlanFieldBox.chosen(field, width, editor, () -> palette().yarns(), _ -> Optional.empty());
          case "colour" -> PlanFieldBox.chosen(field, width, editor, () -> palette().colours(yarnBeside(field)), colour -> swatch(yarnBeside(field), colour));
          default -> PlanFieldBox.typed(field, width, editor);
        };
    boxes.put(field, box);
    return box;
  }

  private Optional<Node> swatch(String yarn, String colour) {
    return yarn.isBlank() || colour.isBlank() ? Optional.empty() : Optional.of(palette().swatch(new YarnColour(yarn, colour)));
  }

  private YarnPalette palette() {
    return YarnPalette.of(model.skeinsProperty().get());
  }

  private String yarnBeside(PlanField colour) {
    return editor.draftProperty().get().text(new PlanField(colour.part(), colour.row(), "yarn"));
  }

  private Label message(PlanField group) {
    Label message = new Label();
    message.getStyleClass().addAll(Styles.TEXT_SMALL, "plan-field-message", "plan-group-message");
    message.setWrapText(true);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    messages.put(group, message);
    return message;
  }

  private void tell() {
    Map<String, Fault> faults = new HashMap<>();
    if (editor.answerProperty().get() instanceof PlanAnswer.Unfinished unfinished) {
      unfinished.faults().forEach(fault -> faults.put(fault.field(), fault));
    }
    boxes.forEach((field, box) -> box.tell(Optional.ofNullable(faults.get(field.toString()))));
    messages.forEach((group, message) -> {
      String words = Optional.ofNullable(faults.get(group.toString())).map(PlanWords::beside).orElse("");
      message.setText(words);
      message.setVisible(!words.isEmpty());
    });
  }
}
