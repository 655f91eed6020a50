package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.DraftPreview;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** A draft before it becomes a plan: what is in it, and a yarn for each of its colours. */
final class DraftView extends VBox {
  private final DraftModel model;
  private final VBox words = new VBox(4);
  private final VBox colours = new VBox(6);

  DraftView(DraftModel model) {
    this.model = model;
    getStyleClass().add("draft");
    addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ESCAPE) {
        model.close();
      }
    });
    VBox body = new VBox(words, onlyOne(), colours, differences());
    body.getStyleClass().add("draft-body");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("plan-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    Node foot = foot();
    FaultList faults = new FaultList(model.faults(), "draft-faults");
    getChildren().addAll(top(), faults, scroll, foot);
    Labels.showOnly(scroll, model.previewProperty().map(Optional::isPresent));
    Labels.showOnly(foot, model.previewProperty().map(Optional::isPresent));
    model.previewProperty().subscribe(now -> words.getChildren().setAll(now.map(DraftView::words).orElse(List.of())));
    model.choices().addListener((ListChangeListener<DraftChoice>) _ -> showColours());
  }

  /** Asks for a draft in a window of the system. */
  static Supplier<Optional<Path>> fileChooser(Node owner) {
    return () -> {
      FileChooser chooser = new FileChooser();
      chooser.setTitle(Say.text("Choose a draft"));
      chooser.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(Say.text("Weaving Information File"), "*.wif", "*.WIF"), new FileChooser.ExtensionFilter(Say.text("Any file"), "*.*"));
      return Optional.ofNullable(chooser.showOpenDialog(owner.getScene().getWindow())).map(File::toPath);
    };
  }

  private Node top() {
    Label title = Labels.title("");
    title.textProperty().bind(model.fileProperty());
    Button close = new Button(Say.text("Leave it"));
    close.setId("draft-close");
    close.getStyleClass().addAll("flat", "small");
    close.setOnAction(_ -> model.close());
    HBox top = new HBox(title, Labels.gap(), close);
    top.getStyleClass().add("page-top");
    return top;
  }

  private static List<Label> words(DraftPreview preview) {
    return DraftWords.of(preview).stream().map(line -> PlanPage.text(line, "fact")).toList();
  }

  private static String yarn(String only) {
    return only.equals(DraftModel.ANY_YARN) ? Say.text("any yarn") : only;
  }

  private Node onlyOne() {
    Choice<String> yarn = new Choice<>(Say.text("Propose colours of"), "draft-only", model.yarns(), DraftView::yarn, model.onlyProperty()::set);
    yarn.setItems(model.yarns());
    model.onlyProperty().subscribe(only -> yarn.show(only));
    Label name = Labels.quiet(Say.text("Propose colours of"));
    name.setLabelFor(yarn);
    Button all = new Button(Say.text("Take all as proposed"));
    all.setId("draft-take-all");
    all.setOnAction(_ -> model.takeAll());
    HBox line = new HBox(Labels.heading(Say.text("Yarns for its colours")), Labels.gap(), name, yarn, all);
    line.getStyleClass().add("reason-line");
    return line;
  }

  private void showColours() {
    colours.getChildren().setAll(model.choices().stream().map(DraftColourRow::new).toList());
  }

  private static Node differences() {
    return Labels.quiet(Say.text("The number says how far off a yarn's colour looks: 1 can just be told apart, black lies 100 from white."));
  }

  private Node foot() {
    FieldBox name = new FieldBox(Say.text("Name of the plan"), "", model.nameProperty(), new SimpleStringProperty("")).named("draft-name");
    name.field().setOnAction(_ -> model.begin());
    ActButton begin = new ActButton(Say.text("Begin this plan"), model::begin, model.act().possibleProperty(), model.act().whyNotProperty()).named("draft-begin").main();
    VBox foot = new VBox(name, Labels.fault(model.troubleProperty()), begin.belowReason());
    foot.getStyleClass().add("side-foot");
    return foot;
  }
}
