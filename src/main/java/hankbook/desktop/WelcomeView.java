package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.SampleStudio;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** What a blank book shows: three ways to begin. */
public final class WelcomeView extends VBox {
  private final WelcomeModel model;
  private final Supplier<Optional<Path>> chooser;
  private final Button first;

  /** @param chooser asks the user for a file */
  public WelcomeView(WelcomeModel model, Supplier<Optional<Path>> chooser) {
    this.model = model;
    this.chooser = chooser;
    getStyleClass().addAll("screen", "welcome");
    first = button("begin-file", Say.text("Choose a stock file…"), this::file);
    HBox ways = new HBox(
        way(Say.text("Your own stock file"), Say.text("A CSV file with one row for each skein: code, yarn and colour, and whatever else you know of it."), first),
        way(Say.text("The sample studio"), Say.text("An invented shelf of {0} skeins and {1} plans, to try everything with. Keep it in a book of its own.", SampleStudio.skeins(), SampleStudio.plans()),
            button("begin-sample", Say.text("Fill with the sample studio"), model::sample)),
        way(Say.text("A blank book"), Say.text("Nothing on the shelf yet; receive skeins one by one."), button("begin-blank", Say.text("Begin blank"), model::blankBook)));
    ways.getStyleClass().add("ways");
    ways.disableProperty().bind(model.busyProperty());
    model.busyProperty().subscribe(busy -> {
      if (!busy) {
        begin();
      }
    });
    getChildren().addAll(
        Labels.title(Say.text("This book is blank")), Labels.quiet(Say.text("Hankbook keeps what yarn there is, what is promised to which cloth, and whether it will do. How shall it begin?")),
        ways, new FaultList(model.faults(), "faults"));
  }

  /** Asks for a stock file in a window of the system. */
  public static Supplier<Optional<Path>> fileChooser(Node owner) {
    return () -> {
      FileChooser chooser = new FileChooser();
      chooser.setTitle(Say.text("Choose a stock file"));
      chooser.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(Say.text("Stock file"), "*.csv"), new FileChooser.ExtensionFilter(Say.text("Any file"), "*.*"));
      return Optional.ofNullable(chooser.showOpenDialog(owner.getScene().getWindow())).map(File::toPath);
    };
  }

  /** Takes the keyboard, which wanders off while the ways are shut. */
  void begin() {
    first.requestFocus();
  }

  private void file() {
    chooser.get().ifPresent(model::stockFile);
  }

  private static Button button(String id, String act, Runnable doing) {
    Button button = new Button(act);
    button.setId(id);
    button.setOnAction(event -> doing.run());
    return button;
  }

  private static Node way(String name, String words, Button button) {
    VBox room = new VBox();
    VBox.setVgrow(room, Priority.ALWAYS);
    VBox way = new VBox(Labels.heading(name), Labels.quiet(words), room, button);
    way.getStyleClass().add("way");
    HBox.setHgrow(way, Priority.ALWAYS);
    return way;
  }
}
