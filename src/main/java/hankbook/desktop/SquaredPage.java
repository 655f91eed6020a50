package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.reckon.Actuals;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A plan whose book is squared: where its yarn went, what came out, what was found, and the ways to do it again. */
final class SquaredPage extends VBox {
  private final SquaredModel model;
  private final SquaredActs acts;
  private final VBox body = new VBox();
  private final Label title = Labels.heading("");
  private final Label words = Labels.quiet("");

  SquaredPage(AfterModel after) {
    this.model = after.squared();
    this.acts = new SquaredActs(after);
    body.getStyleClass().add("plan-answer");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("plan-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    title.setId("squared-title");
    VBox head = new VBox(title, words);
    head.getStyleClass().add("after-head");
    getStyleClass().add("plan-answer-side");
    getChildren().addAll(head, scroll, acts);
    model.seenProperty().subscribe(_ -> show());
    model.asEditedProperty().subscribe(_ -> show());
    model.yarnProperty().subscribe(_ -> show());
  }

  /** Lets the record be saved to a file that is asked for. */
  void offer(Function<String, Optional<Path>> chooser) {
    acts.offer(chooser);
  }

  private void show() {
    model.seenProperty().get().ifPresent(this::show);
  }

  private void show(SquaredSeen seen) {
    Actuals actuals = seen.plan().asReserved().actuals();
    LocalDate recorded = seen.plan().recorded().atZone(ZoneId.systemDefault()).toLocalDate();
    String again = seen.plan().reason().isBlank() ? "" : " " + Say.text("Finished again: {0}.", seen.plan().reason());
    title.setText(Say.text("{0}, squared", seen.plan().plan()));
    words.setText(Say.text("Cut off on {0}, written down on {1} by {2}.", actuals.date().orElse(recorded), recorded, seen.plan().author()) + again);
    boolean edited = model.asEditedProperty().get() && seen.edited().isPresent();
    Reckoning reckoning = edited ? seen.edited().orElseThrow() : seen.reserved();
    var plan = edited ? seen.plan().asEdited().orElseThrow().plan() : seen.plan().asReserved().plan();
    body.getChildren().clear();
    PlanPage.section(body, Say.text("Where the yarn went"), against(seen), yarns(seen, reckoning), new Waterfall(WentBars.of(reckoning, model.yarnProperty().get())));
    PlanPage.section(body, Say.text("Yarn by yarn"), new CauseTable(reckoning, seen.palette()));
    PlanPage.section(body, Say.text("As it came out"), new CameOut(plan, reckoning.really()));
    PlanPage.section(body, Say.text("What was found"), new FoundFacts(actuals));
    List<String> notes = List.of(actuals.reason().isBlank()
        ? ""
        : Say.text("Accepted because: {0}", actuals.reason()), actuals.note()).stream().filter(text -> !text.isBlank()).toList();
    PlanPage.section(body, Say.text("Notes"), notes.stream().map(text -> PlanPage.text(text, "fact")).toArray(Node[]::new));
  }

  private Node against(SquaredSeen seen) {
    ToggleGroup group = new ToggleGroup();
    ToggleButton reserved = choice(Say.text("Against the plan as reserved"), "against-reserved", group, !model.asEditedProperty().get(), () -> model.asEditedProperty().set(false));
    ToggleButton edited = choice(Say.text("As last edited"), "against-edited", group, model.asEditedProperty().get(), () -> model.asEditedProperty().set(true));
    edited.setDisable(!seen.whyNotEdited().isEmpty());
    edited.setAccessibleHelp(seen.whyNotEdited());
    HBox line = new HBox(reserved, edited, Labels.quiet(seen.whyNotEdited()));
    line.getStyleClass().addAll("way-choices", "beside");
    return line;
  }

  private Node yarns(SquaredSeen seen, Reckoning reckoning) {
    ToggleGroup group = new ToggleGroup();
    FlowPane yarns = new FlowPane();
    yarns.getStyleClass().addAll("way-choices", "found-ways");
    Optional<YarnColour> chosen = model.yarnProperty().get();
    yarns.getChildren().add(choice(Say.text("All yarns"), "went-of-all", group, chosen.isEmpty(), () -> model.yarnProperty().set(Optional.empty())));
    int number = 0;
    for (YarnAccount account : reckoning.yarns()) {
      number++;
      ToggleButton one = choice(account.yarn().toString(), "went-of-" + number, group, chosen.equals(Optional.of(account.yarn())),
          () -> model.yarnProperty().set(Optional.of(account.yarn())));
      one.setGraphic(seen.palette().swatch(account.yarn()));
      yarns.getChildren().add(one);
    }
    return yarns;
  }

  /** The page is made anew by a choice; the keyboard stays with it. */
  private ToggleButton choice(String caption, String id, ToggleGroup group, boolean selected, Runnable choose) {
    ToggleButton button = new ToggleButton(caption);
    button.setId(id);
    button.setToggleGroup(group);
    button.setSelected(selected);
    button.getStyleClass().add("way-choice");
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> {
      choose.run();
      Optional.ofNullable(lookup("#" + id)).ifPresent(Node::requestFocus);
      Optional.ofNullable(lookup("#" + id)).map(ToggleButton.class::cast).ifPresent(now -> now.setSelected(true));
    });
    return button;
  }
}
