package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** One field of what was found after a cloth: its caption, what is typed, and what is wrong with it. */
final class FoundBox extends VBox {
  /** An amount of yarn, which the file has as a mass or as a length. */
  static final String AMOUNT = "amount";

  private final ActualsPart part;
  private final int row;
  private final String key;
  private final TextField field = new TextField();
  private final StringProperty fault = new SimpleStringProperty("");

  /** @param name what it is called where its caption alone does not say */
  FoundBox(AfterEditor editor, ActualsPart part, int row, String key, String caption, String name, String prompt, double width) {
    this.part = part;
    this.row = row;
    this.key = key;
    getStyleClass().add("field-box");
    Label label = new Label(caption);
    label.getStyleClass().add("field-name");
    label.setLabelFor(field);
    field.setId(part.key() + (part.isList() ? "[" + row + "]." : part.key().isEmpty() ? "" : ".") + key);
    field.setPromptText(isQuantity() ? Wording.example(prompt) : prompt);
    field.setAccessibleText(name);
    field.accessibleHelpProperty().bind(fault);
    field.setPrefWidth(width);
    setPrefWidth(width);
    setMaxWidth(width);
    setMinWidth(width);
    getChildren().addAll(label, field, Labels.fault(fault));
    show(editor.draftProperty().get());
    field.textProperty().subscribe(text -> enter(editor, isQuantity() ? TypedText.canonical(text) : text));
    field.focusedProperty().subscribe(focused -> {
      if (!focused) {
        editor.keep();
      }
    });
  }

  private boolean isQuantity() {
    return FoundText.isQuantity(part, key);
  }

  private void enter(AfterEditor editor, String typed) {
    String wrong = FoundText.fault(part, key, typed);
    fault.set(wrong);
    field.pseudoClassStateChanged(Styles.STATE_DANGER, !wrong.isEmpty());
    ActualsDraft draft = editor.draftProperty().get();
    if (row <= draft.rows(part).size()) {
      editor.enter(key.equals(AMOUNT) ? withAmount(draft, typed) : draft.with(part, row, key, typed));
    }
  }

  private ActualsDraft withAmount(ActualsDraft draft, String typed) {
    boolean mass = FoundText.isMass(typed);
    return draft.with(part, row, "mass", mass ? typed : "").with(part, row, "length", mass ? "" : typed);
  }

  /** Shows what the draft has, where that is not what was typed here. */
  void show(ActualsDraft draft) {
    if (row > draft.rows(part).size()) {
      return;
    }
    String text = key.equals(AMOUNT) ? draft.text(part, row, "mass") + draft.text(part, row, "length") : draft.text(part, row, key);
    if (!text.equals(isQuantity() ? TypedText.canonical(field.getText()) : field.getText())) {
      field.setText(isQuantity() ? TypedText.shown(text) : text);
    }
  }

  /** Leaves what is wrong to be said beside it, where nothing moves while one types. */
  FoundBox withoutMessage() {
    getChildren().removeLast();
    return this;
  }

  /** What stands beside it: how it is measured, or what is wrong with what is typed. */
  Label help(String words) {
    Label help = Labels.quiet("");
    help.textProperty().bind(fault.map(wrong -> wrong.isEmpty() ? words : wrong));
    field.accessibleHelpProperty().unbind();
    field.accessibleHelpProperty().bind(help.textProperty());
    fault.subscribe(wrong -> mark(help, !wrong.isEmpty()));
    return help;
  }

  /** Lets a quiet text say that something is wrong, or no more. */
  static void mark(Label quiet, boolean wrong) {
    quiet.getStyleClass().removeAll("fault", "quiet");
    quiet.getStyleClass().add(wrong ? "fault" : "quiet");
  }

  TextField field() {
    return field;
  }
}
