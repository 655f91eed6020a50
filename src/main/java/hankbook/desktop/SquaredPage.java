package hankbook.desktop;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.plan.WorkKind;
import hankbook.reckon.Actuals;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
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
  private final VBox body = new VBox();
  private final Label title = Labels.heading("");
  private final Label words = Labels.quiet("");
  private final BooleanProperty takingBack = new SimpleBooleanProperty(false);

  SquaredPage(AfterModel after) {
    this.model = after.squared();
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
    getChildren().addAll(head, scroll, acts(after));
    model.seenProperty().subscribe(_ -> show());
    model.asEditedProperty().subscribe(_ -> show());
    model.yarnProperty().subscribe(_ -> show());
  }

  private void show() {
    model.seenProperty().get().ifPresentOrElse(this::show, () -> takingBack.set(false));
  }

  private void show(SquaredSeen seen) {
    Actuals actuals = seen.plan().asReserved().actuals();
    LocalDate recorded = seen.plan().recorded().atZone(ZoneId.systemDefault()).toLocalDate();
    String again = seen.plan().reason().isBlank() ? "" : " Finished again: " + seen.plan().reason() + ".";
    title.setText(seen.plan().plan() + ", squared");
    words.setText("Cut off on " + actuals.date().orElse(recorded) + ", written down on " + recorded + " by " + seen.plan().author() + "." + again);
    boolean edited = model.asEditedProperty().get() && seen.edited().isPresent();
    Reckoning reckoning = edited ? seen.edited().orElseThrow() : seen.reserved();
    var plan = edited ? seen.plan().asEdited().orElseThrow().plan() : seen.plan().asReserved().plan();
    body.getChildren().clear();
    PlanPage.section(body, "Where the yarn went", against(seen), yarns(seen, reckoning), new Waterfall(WentBars.of(reckoning, model.yarnProperty().get())));
    PlanPage.section(body, "Yarn by yarn", new CauseTable(reckoning, seen.palette()));
    PlanPage.section(body, "As it came out", new CameOut(plan, reckoning.really()));
    PlanPage.section(body, "What was found", found(actuals));
    List<String> notes = List.of(actuals.reason().isBlank() ? "" : "Accepted because: " + actuals.reason(), actuals.note()).stream().filter(text -> !text.isBlank()).toList();
    PlanPage.section(body, "Notes", notes.stream().map(text -> PlanPage.text(text, "fact")).toArray(Node[]::new));
  }

  private Node against(SquaredSeen seen) {
    ToggleGroup group = new ToggleGroup();
    ToggleButton reserved = choice("Against the plan as reserved", "against-reserved", group, !model.asEditedProperty().get(), () -> model.asEditedProperty().set(false));
    ToggleButton edited = choice("As last edited", "against-edited", group, model.asEditedProperty().get(), () -> model.asEditedProperty().set(true));
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
    yarns.getChildren().add(choice("All yarns", "went-of-all", group, chosen.isEmpty(), () -> model.yarnProperty().set(Optional.empty())));
    int number = 0;
    for (YarnAccount account : reckoning.yarns()) {
      number++;
      ToggleButton one = choice(account.yarn().toString(), "went-of-" + number, group, chosen.equals(Optional.of(account.yarn())), () -> model.yarnProperty().set(Optional.of(account.yarn())));
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

  private static Node found(Actuals actuals) {
    ActualsDraft said = ActualsDraft.of(new ActualsFile(Optional.empty(), actuals).json());
    FactList facts = new FactList();
    said.rows(ActualsPart.LEFTOVERS).forEach(row -> facts.add("Left of " + FoundRows.code(row), left(row)));
    bundles(facts, "Thrums", said.rows(ActualsPart.THRUMS));
    bundles(facts, "Samples", said.rows(ActualsPart.SAMPLES));
    for (FoundField field : FoundField.values()) {
      fact(facts, field.caption(), said.text(field.part(), 1, field.key()));
    }
    for (WorkKind kind : WorkKind.values()) {
      fact(facts, AfterWords.begin(kind.key()) + ", hours", said.text(ActualsPart.HOURS, 1, kind.key()));
    }
    return facts;
  }

  private static void bundles(FactList facts, String name, List<DraftRow> rows) {
    rows.forEach(row -> {
      String of = row.text("yarn").isEmpty() ? " of all warp yarns" : " of " + row.text("yarn") + " " + row.text("colour");
      facts.add(name + of, row.text("mass") + row.text("length"));
    });
  }

  private static void fact(FactList facts, String name, String value) {
    if (!value.isEmpty()) {
      facts.add(name, value);
    }
  }

  private static String left(DraftRow row) {
    return switch (LeftWay.of(row).orElse(LeftWay.USED_UP)) {
      case USED_UP -> "nothing, used up";
      case LENGTH -> row.text("left");
      case WEIGHT -> row.text("gross") + " gross, " + row.text("tare") + " tare" + (row.text("regain").isEmpty() ? "" : ", moisture " + row.text("regain"));
      case TURNS -> row.text("turns") + " turns of " + row.text("reel");
    };
  }

  private Node acts(AfterModel after) {
    Button again = new Button("Finish again…");
    again.setId("finish-again");
    again.setOnAction(_ -> after.finishAgain());
    ToggleButton back = new ToggleButton("Take back…");
    back.setId("ask-take-back");
    back.selectedProperty().bindBidirectional(takingBack);
    List<Node> buttons = new ArrayList<>(List.of(again, back));
    HBox line = new HBox(8);
    line.getChildren().setAll(buttons);
    FieldBox reason = new FieldBox("Why it is taken back", "its yarn is put on the loom again, and what was found stays in its form", model.reasonProperty(), new SimpleStringProperty("")).named("back-reason");
    reason.field().setOnAction(_ -> model.takeBack());
    ActButton act = new ActButton("Take back the finish", model::takeBack, model.act().possibleProperty(), model.act().whyNotProperty()).named("take-back-finish");
    VBox taking = new VBox(8, reason, act, Labels.fault(model.refusalProperty()));
    Labels.showOnly(taking, takingBack);
    takingBack.subscribe(now -> {
      if (now) {
        reason.field().requestFocus();
      }
    });
    VBox acts = new VBox(line, taking);
    acts.getStyleClass().add("plan-acts");
    acts.setMinHeight(USE_PREF_SIZE);
    return acts;
  }
}
