package hankbook.desktop;

import hankbook.cost.ValueMethod;
import hankbook.desktop.say.Say;
import hankbook.studio.ValueBy;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The value of the stock, and beside it what was paid and where it went. */
final class ValuePage extends CostsPage {
  private final ValueModel model;
  private final ValueTable table;
  private final VBox below = new VBox();
  private final PaidPane paid = new PaidPane();
  private final FieldBox day;

  /** @param enter leads to where a purchase is entered */
  ValuePage(ValueModel model, Runnable enter) {
    super("value-of-the-stock", Say.text("Value of the stock"));
    this.model = model;
    table = new ValueTable(enter);
    day = new FieldBox(Say.text("At the end of"), "", model.on().textProperty(), model.dayMessageProperty()).named("value-on");
    day.field().setPromptText(Say.text("now"));
    day.setPrefWidth(110);
    below.getStyleClass().add("value-below");
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox stock = new VBox(table, below);
    stock.getStyleClass().add("value-stock");
    HBox.setHgrow(stock, Priority.ALWAYS);
    ScrollPane scroll = new ScrollPane(paid);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("paid-scroll");
    HBox both = new HBox(stock, scroll);
    both.getStyleClass().add("value-both");
    VBox.setVgrow(both, Priority.ALWAYS);
    getChildren().addAll(choices(), meaning(), Labels.fault(model.answer().troubleProperty()), both);
    visibleProperty().subscribe(model.answer()::watch);
    model.answer().foundProperty().subscribe(_ -> show());
    model.byProperty().subscribe(_ -> show());
  }

  @Override
  void refresh() {
    model.refresh();
  }

  @Override
  void search() {
    table.requestFocus();
  }

  private Node choices() {
    Node methods = choices("method", Arrays.asList(ValueMethod.values()), ValueMethodWords::name, one -> model.methodProperty().set(Optional.of(one)), group ->
        model.answer().foundProperty().subscribe(found -> found.ifPresent(now -> select(group, model.methodProperty().get().orElse(now.inForce())))));
    Node groups = choices("by", Arrays.asList(ValueBy.values()), ValueByWords::name, model.byProperty()::set, group -> model.byProperty().subscribe(by -> select(group, by)));
    FieldRow row = new FieldRow(day, named(Say.text("Valued by"), methods), named(Say.text("Grouped by"), groups));
    row.getStyleClass().add("value-choices");
    return row;
  }

  private static Node named(String name, Node choices) {
    Label label = new Label(name);
    label.getStyleClass().add("field-name");
    VBox box = new VBox(label, choices);
    box.getStyleClass().add("field-box");
    return box;
  }

  private static <T extends Enum<T>> Node choices(String id, List<T> all, Function<T, String> name, Consumer<T> choose, Consumer<ToggleGroup> follow) {
    ToggleGroup group = new ToggleGroup();
    HBox choices = new HBox();
    choices.getStyleClass().add("way-choices");
    for (T one : all) {
      ToggleButton choice = new ToggleButton(name.apply(one));
      choice.setId("value-" + id + "-" + one.name().toLowerCase(Locale.ROOT));
      choice.setUserData(one);
      choice.setToggleGroup(group);
      choice.getStyleClass().add("way-choice");
      choice.setMinWidth(USE_PREF_SIZE);
      choice.setOnAction(_ -> {
        choice.setSelected(true);
        choose.accept(one);
      });
      choices.getChildren().add(choice);
    }
    follow.accept(group);
    return choices;
  }

  private static void select(ToggleGroup group, Object wanted) {
    group.getToggles().stream().filter(toggle -> wanted.equals(toggle.getUserData())).forEach(group::selectToggle);
  }

  private Node meaning() {
    Label words = Labels.quiet(model.answer().foundProperty().map(found -> found.map(this::meaning).orElse("")));
    words.setId("value-meaning");
    HBox.setHgrow(words, Priority.ALWAYS);
    words.setMaxWidth(Double.MAX_VALUE);
    ActButton adopt = new ActButton(Say.text("Value by it from now on"), model::adopt, model.adoptAct().possibleProperty(),
        model.adoptAct().whyNotProperty().map(_ -> "")).named("value-adopt");
    Labels.showOnly(adopt, model.adoptAct().possibleProperty());
    HBox line = new HBox(words, adopt);
    line.getStyleClass().add("reason-line");
    return line;
  }

  private String meaning(ValueModel.Found found) {
    ValueMethod method = found.home().value().method();
    String state = method == found.inForce()
        ? Say.text("In force in this ledger.")
        : Say.text("Only looked at: in force is {0}.", PlanWords.inside(ValueMethodWords.name(found.inForce())));
    return ValueMethodWords.name(method) + ". " + ValueMethodWords.meaning(method) + " " + state;
  }

  private void show() {
    model.answer().foundProperty().get().ifPresent(found -> {
      table.show(ValueLine.of(found.home(), model.byProperty().get()), found.home(), ValueByWords.name(model.byProperty().get()));
      below.getChildren().setAll(ValueNotes.of(found.stocks()));
      paid.show(found.home());
    });
  }
}
