package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The chosen entry: what it moved, what taking it back would do, the ways to what it speaks of, and the way to take it back. */
final class EntryPage extends VBox {
  private static final double MOST_HIGH = 112;
  private static final int MOST_SKEINS = 12;

  private final Opens opens;
  private final FlowPane ways = new FlowPane();

  EntryPage(ObservableValue<Optional<JournalRow>> chosen, TakingBack taking, Opens opens) {
    this.opens = opens;
    getStyleClass().add("below");
    Label what = Labels.heading("");
    what.setId("entry-headline");
    what.textProperty().bind(chosen.map(now -> now.map(EntryPage::headline).orElse("")));
    ways.getStyleClass().add("entry-ways");
    chosen.subscribe(now -> ways.getChildren().setAll(now.map(this::ways).orElse(List.of())));
    getChildren().addAll(what, moved(chosen, taking), ways, reason(taking), refusal(taking));
  }

  /** Opens what the entry speaks of; where that are several things, the keyboard goes to the ways to them. */
  void open() {
    if (ways.getChildren().size() == 1) {
      ((Button) ways.getChildren().getFirst()).fire();
    } else if (!ways.getChildren().isEmpty()) {
      ways.getChildren().getFirst().requestFocus();
    }
  }

  private static Node moved(ObservableValue<Optional<JournalRow>> chosen, TakingBack taking) {
    Label lines = new Label();
    lines.setId("entry-lines");
    lines.setWrapText(true);
    lines.textProperty().bind(chosen.map(now -> now.map(row -> String.join("\n", row.lines())).orElse("")));
    ScrollPane scroll = new ScrollPane(lines);
    scroll.getStyleClass().add("change-scroll");
    scroll.setFitToWidth(true);
    scroll.setMaxHeight(MOST_HIGH);
    ChangeList changes = new ChangeList(taking.previewProperty());
    changes.setId("preview");
    VBox then = column(Say.text("Taken back, there would be"), changes);
    Labels.showOnly(then, taking.previewProperty().map(Optional::isPresent));
    HBox both = new HBox(column(Say.text("What moved"), scroll), then);
    both.getStyleClass().add("entry-moved");
    return both;
  }

  private static VBox column(String heading, Node body) {
    VBox column = new VBox(Labels.quiet(heading), body);
    column.setPrefWidth(0);
    HBox.setHgrow(column, Priority.ALWAYS);
    return column;
  }

  private List<Node> ways(JournalRow row) {
    List<Node> found = new ArrayList<>();
    row.skeins().stream().limit(MOST_SKEINS).map(code -> way(Say.text("Skein {0}", code), "open-skein", code, opens.skein())).forEach(found::add);
    row.plans().stream().map(plan -> way(Say.text("Plan {0}", plan), "open-plan", plan, opens.plan())).forEach(found::add);
    row.others().map(number -> way(row.takenBack() ? Say.text("Entry {0}, which took it back", number) : Say.text("Entry {0}, which it takes back", number),
        "open-entry", number, opens.entry()::accept)).ifPresent(found::add);
    return found;
  }

  private static <T> Button way(String words, String id, T thing, Consumer<T> open) {
    Button way = new Button(words);
    way.setId(id);
    way.getStyleClass().add("small");
    way.setOnAction(_ -> open.accept(thing));
    return way;
  }

  private static Node reason(TakingBack taking) {
    TextField reason = new TextField();
    reason.setId("reason");
    reason.setPromptText(Say.text("Why it is taken back"));
    reason.setAccessibleText(Say.text("Why it is taken back"));
    reason.textProperty().bindBidirectional(taking.reasonProperty());
    reason.setOnAction(_ -> taking.takeBack());
    return new ActButton(Say.text("Take back this entry"), taking::takeBack, taking.act().possibleProperty(), taking.act().whyNotProperty())
        .named("take-back").after(reason);
  }

  private static Label refusal(TakingBack taking) {
    Label refusal = Labels.fault(taking.refusalProperty());
    refusal.setId("refusal");
    return refusal;
  }

  private static String headline(JournalRow row) {
    return row.note().isBlank()
        ? Say.text("Entry {0}: {1}, {2}, by {3}.", row.number(), row.what(), row.date(), row.by())
        : Say.text("Entry {0}: {1}, {2}, by {3}. “{4}”", row.number(), row.what(), row.date(), row.by(), row.note());
  }
}
