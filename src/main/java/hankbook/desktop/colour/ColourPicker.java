package hankbook.desktop.colour;

import atlantafx.base.theme.Styles;
import hankbook.desktop.Work;
import hankbook.desktop.say.Say;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/**
 * Picks a colour: by its numbers, or by pointing at it in a photograph. Stands in a page among other things; its nodes are called {@code colour-text},
 * {@code colour-photograph}, {@code photograph} and {@code colour-take}.
 */
public final class ColourPicker extends VBox {
  private final ColourPicking model;
  private final TextField text = new TextField();
  private Supplier<Optional<Path>> chooser = this::chosen;

  /** @param taken is given the colour that is taken, as {@code #rrggbb} */
  public ColourPicker(Work work, Consumer<String> taken) {
    this(new ColourPicking(work, taken));
  }

  /** One of a colour that is being picked. */
  public ColourPicker(ColourPicking model) {
    this.model = model;
    getStyleClass().add("colour-picker");
    getChildren().addAll(typed(), fault(model.messageProperty()), fault(model.troubleProperty()), quiet(), pointed(), take());
  }

  /** Lets a photograph be chosen otherwise than from a dialog of the system. */
  public ColourPicker choosing(Supplier<Optional<Path>> other) {
    chooser = other;
    return this;
  }

  /** Begins with a colour such as {@code #2f5d8a}, or with none where it is empty, and takes the keyboard; before the first pulse the field would not be in the scene yet. */
  public void begin(String hex) {
    model.typedProperty().set(hex);
    applyCss();
    text.requestFocus();
    text.selectAll();
  }

  private Node typed() {
    text.setId("colour-text");
    text.setPromptText(Say.text("#2f5d8a or 47, 93, 138"));
    text.setAccessibleText(Say.text("Colour by its numbers"));
    text.accessibleHelpProperty().bind(model.messageProperty());
    text.textProperty().bindBidirectional(model.typedProperty());
    text.setOnAction(_ -> model.take());
    model.messageProperty().subscribe(message -> text.pseudoClassStateChanged(Styles.STATE_DANGER, !message.isEmpty()));
    HBox.setHgrow(text, Priority.ALWAYS);
    Button open = new Button(Say.text("From a photograph…"));
    open.setId("colour-photograph");
    open.setMinWidth(USE_PREF_SIZE);
    open.setOnAction(_ -> chooser.get().ifPresent(model::open));
    HBox line = new HBox(text, open);
    line.getStyleClass().add("beside");
    return line;
  }

  private Node quiet() {
    Label reading = new Label(Say.text("The photograph is being read."));
    reading.getStyleClass().add("quiet");
    showOnly(reading, model.readingProperty().map(now -> now));
    return reading;
  }

  /** The photograph, and below it what is pointed at and how that is done. */
  private Node pointed() {
    Label how = new Label(Say.text("Click the yarn, or point with the arrow keys (Shift: farther). The colour is the mean of the square."));
    how.setWrapText(true);
    how.getStyleClass().add("quiet");
    HBox.setHgrow(how, Priority.ALWAYS);
    HBox below = new HBox(new MagnifiedPatch(model), how);
    below.getStyleClass().add("beside");
    PhotographPane photograph = new PhotographPane(model);
    VBox all = new VBox(photograph, below);
    all.getStyleClass().add("colour-picker");
    showOnly(all, model.photographProperty().map(Optional::isPresent));
    all.visibleProperty().subscribe(shown -> {
      if (shown) {
        photograph.requestFocus();
      }
    });
    return all;
  }

  private Node take() {
    Region colour = new Region();
    colour.getStyleClass().add("colour-shown");
    model.hexProperty().subscribe(hex -> colour.setStyle(hex.isEmpty() ? "" : "-fx-background-color: " + hex + ";"));
    Button take = new Button(Say.text("Take this colour"));
    take.setId("colour-take");
    take.setMinWidth(USE_PREF_SIZE);
    take.setOnAction(_ -> model.take());
    take.disableProperty().bind(model.hexProperty().isEmpty());
    HBox.setHgrow(colour, Priority.ALWAYS);
    HBox line = new HBox(colour, take);
    line.getStyleClass().add("beside");
    return line;
  }

  private Optional<Path> chosen() {
    FileChooser files = new FileChooser();
    files.setTitle(Say.text("Choose a photograph"));
    files.getExtensionFilters().setAll(
        new FileChooser.ExtensionFilter(Say.text("Photographs"), "*.jpg", "*.jpeg", "*.png", "*.JPG", "*.JPEG", "*.PNG"), new FileChooser.ExtensionFilter(Say.text("Any file"), "*.*"));
    return Optional.ofNullable(files.showOpenDialog(getScene().getWindow())).map(File::toPath);
  }

  private static Label fault(ObservableValue<String> text) {
    Label label = new Label();
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().add("fault");
    label.textProperty().bind(text);
    showOnly(label, text.map(it -> !it.isEmpty()));
    return label;
  }

  private static void showOnly(Node node, ObservableValue<Boolean> when) {
    node.visibleProperty().bind(when);
    node.managedProperty().bind(node.visibleProperty());
  }
}
