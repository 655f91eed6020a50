package hankbook.desktop;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The journal: every entry, newest first, and below the table the chosen one with the way to take it back. */
public final class JournalView extends BorderPane {
  private final JournalModel journal;
  private final TakingBack taking;
  private final TextField search = new TextField();

  public JournalView(JournalModel journal, TakingBack taking) {
    this.journal = journal;
    this.taking = taking;
    getStyleClass().add("screen");
    setTop(top());
    setCenter(new JournalTable(journal));
    Node below = below();
    journal.chosenProperty().subscribe(chosen -> {
      taking.turnTo(chosen);
      setBottom(chosen.isPresent() ? below : null);
    });
  }

  /** Puts the keyboard into the search. */
  public void search() {
    search.requestFocus();
    search.selectAll();
  }

  private HBox top() {
    search.setId("search-journal");
    search.setPromptText("Search the journal");
    search.setAccessibleText("Search the journal");
    search.textProperty().bindBidirectional(journal.searchProperty());
    search.getStyleClass().add("search");
    Label summary = Labels.quiet(journal.summaryProperty());
    summary.setWrapText(false);
    HBox top = new HBox(Labels.title("Journal"), search, summary);
    top.getStyleClass().add("screen-top");
    return top;
  }

  private Node below() {
    Label what = Labels.heading("");
    what.textProperty().bind(journal.chosenProperty().map(chosen -> chosen.map(JournalView::headline).orElse("")));
    TextArea lines = new TextArea();
    lines.setEditable(false);
    lines.setPrefRowCount(3);
    lines.setAccessibleText("What moved");
    lines.textProperty().bind(journal.chosenProperty().map(chosen -> chosen.map(row -> String.join("\n", row.lines())).orElse("")));
    TextField reason = new TextField();
    reason.setId("reason");
    reason.setPromptText("Why it is taken back");
    reason.setAccessibleText("Why it is taken back");
    reason.textProperty().bindBidirectional(taking.reasonProperty());
    reason.setOnAction(event -> taking.takeBack());
    ActButton act = new ActButton("Take back this entry", taking::takeBack, taking.act().possibleProperty(), taking.act().whyNotProperty()).named("take-back").after(reason);
    Label refusal = Labels.fault(taking.refusalProperty());
    refusal.setId("refusal");
    VBox below = new VBox(what, lines, act, refusal);
    below.getStyleClass().add("below");
    return below;
  }

  private static String headline(JournalRow row) {
    String note = row.note().isBlank() ? "" : " “" + row.note() + "”";
    return "Entry " + row.number() + ": " + row.what().toLowerCase(Locale.ROOT) + " on " + row.date() + " by " + row.by() + "." + note;
  }
}
