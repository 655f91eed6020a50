package hankbook.desktop;

import atlantafx.base.theme.Styles;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A field with its name above and what is wrong with it below. */
final class FieldBox extends VBox {
  private final TextField field = new TextField();
  private final StringProperty text;

  FieldBox(String name, String example, StringProperty text, ObservableValue<String> message) {
    this.text = text;
    Label label = new Label(name);
    label.getStyleClass().add("field-name");
    label.setLabelFor(field);
    field.setPromptText(example);
    field.setAccessibleText(name);
    field.textProperty().bindBidirectional(text);
    field.accessibleHelpProperty().bind(message);
    message.subscribe(it -> field.pseudoClassStateChanged(Styles.STATE_DANGER, !it.isEmpty()));
    getStyleClass().add("field-box");
    getChildren().addAll(label, field, Labels.fault(message));
  }

  /** Takes it for a quantity: numbers in it have the decimal mark of the user's language, and so has the example, in the user's units. */
  FieldBox quantity() {
    field.setPromptText(Wording.example(field.getPromptText()));
    return marked();
  }

  /** The same where the example is what holds as long as nothing is typed: it is shown in the units in which it was entered. */
  FieldBox quantityInstead() {
    field.setPromptText(TypedText.shown(field.getPromptText()));
    return marked();
  }

  private FieldBox marked() {
    field.textProperty().unbindBidirectional(text);
    TypedText.bind(field.textProperty(), text);
    return this;
  }

  /** The same where a field of that key is for a quantity. */
  FieldBox quantityIf(String key) {
    return TypedText.isQuantity(key) ? quantity() : this;
  }

  /** A field in which nothing can be wrong. */
  static FieldBox plain(String name, String example, StringProperty text) {
    return new FieldBox(name, example, text, new SimpleStringProperty(""));
  }

  /** Leaves what is wrong to be said where nothing moves while one types; that something is wrong is marked in the field all the same. */
  FieldBox withoutMessage() {
    getChildren().removeLast();
    return this;
  }

  /** Shows beside the field the colour that is typed in it. */
  FieldBox withSwatch() {
    Swatch swatch = new Swatch(28, 28);
    field.textProperty().subscribe(text -> swatch.show(text.strip(), text.strip()));
    int place = getChildren().indexOf(field);
    HBox both = new HBox(field, swatch);
    both.getStyleClass().add("beside");
    HBox.setHgrow(field, Priority.ALWAYS);
    getChildren().add(place, both);
    return this;
  }

  /** Lets its name follow what it is about. */
  FieldBox called(ObservableValue<String> name) {
    ((Label) getChildren().getFirst()).textProperty().bind(name);
    field.accessibleTextProperty().bind(name);
    return this;
  }

  /** Calls it otherwise. */
  void name(String name) {
    ((Label) getChildren().getFirst()).setText(name);
    field.setAccessibleText(name);
  }

  /** Two of them beside each other. */
  static HBox pair(FieldBox one, FieldBox other) {
    HBox pair = new HBox(one, other);
    pair.getStyleClass().add("field-pair");
    pair.getChildren().forEach(box -> HBox.setHgrow(box, Priority.ALWAYS));
    pair.getChildren().forEach(box -> ((FieldBox) box).setPrefWidth(1));
    return pair;
  }

  TextField field() {
    return field;
  }

  /** Gives the field a name to be found by. */
  FieldBox named(String id) {
    field.setId(id);
    return this;
  }
}
