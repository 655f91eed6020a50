package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The fields of the open plan, in groups. Rebuilt only where rows come or go, so that typing is never disturbed. */
final class PlanForm extends VBox {

  private final PlansModel model;
  private final PlanEditor editor;
  private final TextField name = new TextField();
  private final PlanFields fields;
  private final PlanGroups groups;
  private final PlanActButton putAway;
  private String shape = "";

  PlanForm(PlansModel model) {
    this.model = model;
    this.editor = model.editor();
    this.fields = new PlanFields(model);
    this.groups = new PlanGroups(fields, editor, model.offers(), this::focus);
    getStyleClass().add("plan-form");
    name.getStyleClass().addAll(Styles.TITLE_3, "plan-name");
    name.setId("plan-name");
    HBox.setHgrow(name, Priority.ALWAYS);
    putAway = new PlanActButton(PlanAct.PUT_AWAY, model);
    putAway.getStyleClass().addAll(Styles.FLAT, Styles.SMALL);
    name.setAccessibleText(Say.text("Name of the plan"));
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
      fields.show(draft);
      return;
    }
    shape = now;
    fields.clear();
    getChildren().clear();
    if (!editor.nameProperty().get().isEmpty()) {
      build();
      tell();
      begin();
    }
  }

  /** Whoever begins a plan goes on typing in its first field, once that is seen. */
  private void begin() {
    if (model.beginning().isJustBegun(editor.nameProperty().get())) {
      Platform.runLater(() -> focus("pieces[1].name"));
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
    HBox head = new HBox(name);
    head.getStyleClass().add("plan-head");
    FlowPane acts = new FlowPane(act("plan-duplicate", Say.text("Duplicate"), model::duplicate), act("plan-beside", Say.text("Vary and compare"), model::layBeside), putAway);
    acts.getStyleClass().add("plan-name-acts");
    getChildren().addAll(new VBox(4, head, acts), fields.message("plan"));
    getChildren().addAll(groups.build());
  }

  private static Button act(String id, String words, Runnable doing) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().addAll(Styles.FLAT, Styles.SMALL);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> doing.run());
    return button;
  }

  /** Puts the keyboard into the field of a path, or the button of an id. */
  private void focus(String id) {
    PlanField.parse(id).flatMap(fields::find)
        .ifPresentOrElse(PlanFieldBox::focus, () -> lookupAll(".button").stream().filter(button -> id.equals(button.getId())).findFirst().ifPresent(Node::requestFocus));
  }

  private void tell() {
    fields.tell(editor.answerProperty().get());
    groups.openWhereAtFault();
  }
}
