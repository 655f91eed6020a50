package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Where yarn of the chosen skein is wound onto a new package, or all of it onto another skein. */
final class RewindPanes {
  private RewindPanes() {}

  static VBox windOff(WindingOff model) {
    FieldBox length = new FieldBox(Say.text("How much"), "50 m", model.length().textProperty(), model.length().messageProperty()).named("wind-length").quantity();
    length.field().setOnAction(_ -> model.wind());
    length.field().disableProperty().bind(model.allProperty());
    CheckBox all = new CheckBox(Say.text("All that is free of it"));
    all.setId("wind-all");
    all.selectedProperty().bindBidirectional(model.allProperty());
    FieldBox code = FieldBox.plain(Say.text("Code of the new one"), "", model.codeProperty()).named("wind-code");
    code.field().setOnAction(_ -> model.wind());
    FieldBox place = FieldBox.plain(Say.text("Its place"), Say.text("where the other lies"), model.placeProperty()).named("wind-place");
    place.field().setOnAction(_ -> model.wind());
    ComboBox<PackageForm> form = new ComboBox<>();
    form.setId("wind-form");
    form.getItems().setAll(PackageForm.values());
    form.setConverter(said(put -> Say.known(put.toString())));
    form.valueProperty().bindBidirectional(model.formProperty());
    ActButton act = new ActButton(Say.text("Wind it off"), model::wind, model.act().possibleProperty(), model.act().whyNotProperty()).named("wind");
    return new VBox(length, all, code, named(Say.text("Put up as"), form), place, preview("wind-preview", model.previewProperty()), act);
  }

  static VBox join(Joining model) {
    ComboBox<Skein> other = new ComboBox<>(model.others());
    other.setId("join-other");
    other.setButtonCell(cell());
    other.setCellFactory(_ -> cell());
    other.setPromptText(Say.text("The other skein"));
    other.valueProperty().subscribe(skein -> model.otherProperty().set(Optional.ofNullable(skein)));
    model.otherProperty().subscribe(skein -> other.setValue(skein.orElse(null)));
    CheckBox mix = new CheckBox(Say.text("The lots may be mixed"));
    mix.setId("join-mix");
    mix.selectedProperty().bindBidirectional(model.mixProperty());
    Labels.showOnly(mix, model.differProperty().map(differ -> differ));
    ActButton act = new ActButton(Say.text("Join them"), model::join, model.act().possibleProperty(), model.act().whyNotProperty()).named("join");
    return new VBox(Labels.quiet(Say.text("All that is free of this one is wound onto the other.")), named(Say.text("Onto"), other), mix, preview("join-preview", model.previewProperty()), act);
  }

  private static Label preview(String id, ObservableValue<String> text) {
    Label label = Labels.quiet(text);
    label.setId(id);
    return label;
  }

  /** A choice with its name above. */
  static Node named(String name, ComboBox<?> choice) {
    Label label = new Label(name);
    label.setLabelFor(choice);
    label.getStyleClass().add("field-name");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setAccessibleText(name);
    VBox box = new VBox(label, choice);
    box.getStyleClass().add("field-box");
    return box;
  }

  private static ListCell<Skein> cell() {
    return new ListCell<>() {
      @Override
      protected void updateItem(Skein skein, boolean empty) {
        super.updateItem(skein, empty);
        setText(empty || skein == null ? Say.text("The other skein") : words(skein));
      }
    };
  }

  private static String words(Skein skein) {
    String holds = Wording.yarn(skein.holds());
    return skein.lot().isEmpty() ? Say.text("{0}, {1}", skein.code(), holds) : Say.text("{0}, lot {1}, {2}", skein.code(), skein.lot(), holds);
  }

  private static <T> StringConverter<T> said(Function<T, String> words) {
    return new StringConverter<>() {
      @Override
      public String toString(T value) {
        return value == null ? "" : words.apply(value);
      }

      @Override
      public T fromString(String text) {
        throw new UnsupportedOperationException(text);
      }
    };
  }
}
