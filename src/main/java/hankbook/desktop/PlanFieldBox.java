package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.Fault;
import hankbook.exchange.PlanField;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One field of the form: its caption, what is typed, and what is wrong with it. */
final class PlanFieldBox extends VBox {
  /** Fields for words, or orders of their own notation. */
  private static final Set<String> WORDS = Set.of("name", "yarn", "colour", "mark", "loom", "reed", "weave", "sley", "oneLot", "succession", "weftSuccession");
  private static final PseudoClass DANGER = PseudoClass.getPseudoClass("danger");

  private final PlanField field;
  private final Control control;
  private final TextField text;
  private final Label message = new Label();

  private PlanFieldBox(PlanField field, Control control, TextField text, double width, PlanEditor editor) {
    this.field = field;
    this.control = control;
    this.text = text;
    getStyleClass().add("plan-field");
    Label caption = new Label(PlanWords.caption(field.part(), field.key()));
    caption.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    caption.setLabelFor(control);
    message.getStyleClass().addAll(Styles.TEXT_SMALL, "plan-field-message");
    message.setWrapText(true);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    control.setId(field.toString());
    control.setPrefWidth(width);
    control.setAccessibleText(PlanWords.place(field));
    setPrefWidth(width);
    setMaxWidth(width);
    getChildren().addAll(caption, control, message);
    text.setText(shown(editor.draftProperty().get().text(field)));
    text.textProperty().subscribe(typed -> editor.enter(field, typed == null ? "" : canonical(typed)));
    control.focusedProperty().subscribe(focused -> {
      if (!focused) {
        editor.keep();
      }
    });
  }

  /** A field to type in. */
  static PlanFieldBox typed(PlanField field, double width, PlanEditor editor) {
    TextField text = new TextField();
    text.setPromptText(Wording.example(PlanWords.example(field.part(), field.key())));
    return new PlanFieldBox(field, text, text, width, editor);
  }

  /** A field for a written order, as wide as there is room, which is read back below it. */
  static PlanFieldBox written(PlanField field, String unit, PlanEditor editor) {
    PlanFieldBox box = typed(field, USE_COMPUTED_SIZE, editor);
    box.setMaxWidth(Double.MAX_VALUE);
    Label reading = new Label();
    reading.setId(field + "-words");
    reading.getStyleClass().addAll(Styles.TEXT_SMALL, "plan-field-reading");
    reading.setWrapText(true);
    reading.textProperty().bind(box.text.textProperty().map(typed -> OrderReading.of(typed, unit)));
    Labels.showOnly(reading, reading.textProperty().map(words -> !words.isEmpty()));
    box.getChildren().add(box.getChildren().indexOf(box.message), reading);
    return box;
  }

  /** A field to type in or to choose for. */
  static PlanFieldBox chosen(PlanField field, double width, PlanEditor editor, Supplier<List<String>> choices, Function<String, Optional<Node>> picture) {
    ComboBox<String> box = new ComboBox<>();
    box.setEditable(true);
    box.setPromptText(PlanWords.example(field.part(), field.key()));
    box.setCellFactory(_ -> new ChoiceCell(picture));
    PlanFieldBox made = new PlanFieldBox(field, box, box.getEditor(), width, editor);
    box.setValue(box.getEditor().getText());
    box.setOnShowing(_ -> made.offer(box, choices));
    return made;
  }

  /** One choice with its picture. */
  private static final class ChoiceCell extends ListCell<String> {
    private final Function<String, Optional<Node>> picture;

    ChoiceCell(Function<String, Optional<Node>> picture) {
      this.picture = picture;
    }

    @Override
    protected void updateItem(@Nullable String choice, boolean empty) {
      super.updateItem(choice, empty);
      setText(choice);
      setGraphic(choice == null || empty ? null : picture.apply(choice).orElse(null));
    }
  }

  /** New choices must not disturb what was typed. */
  private void offer(ComboBox<String> box, Supplier<List<String>> choices) {
    String typed = text.getText();
    box.getItems().setAll(choices.get());
    box.setValue(typed);
    text.setText(typed);
  }

  /** Shows what the draft has, where that is not what was typed here. */
  void show(String draft) {
    if (!draft.equals(canonical(text.getText()))) {
      text.setText(shown(draft));
    }
  }

  private String shown(String draft) {
    return WORDS.contains(field.key()) ? draft : TypedText.shown(draft);
  }

  private String canonical(String typed) {
    return WORDS.contains(field.key()) ? typed : TypedText.canonical(typed);
  }

  /** Says what is wrong with the text, or nothing. */
  void tell(Optional<Fault> fault) {
    String words = fault.map(PlanWords::beside).orElse("");
    message.setText(words);
    message.setVisible(!words.isEmpty());
    boolean bad = fault.filter(wrong -> !wrong.found().isBlank()).isPresent();
    control.pseudoClassStateChanged(DANGER, bad);
    message.pseudoClassStateChanged(DANGER, bad);
    control.setAccessibleHelp(words);
  }

  /** The field it is of. */
  PlanField field() {
    return field;
  }

  boolean isFilled() {
    return !text.getText().isBlank();
  }

  boolean isAtFault() {
    return message.isVisible();
  }

  void focus() {
    control.requestFocus();
  }
}
