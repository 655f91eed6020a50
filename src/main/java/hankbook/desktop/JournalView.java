package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/** The journal: every entry, newest first, and below the table the chosen one. */
public final class JournalView extends BorderPane {
  private final JournalModel journal;
  private final TextField search = new TextField();
  private final JournalTable table;

  JournalView(JournalModel journal, TakingBack taking, Opens opens) {
    this.journal = journal;
    getStyleClass().add("screen");
    EntryPage below = new EntryPage(journal.chosenProperty(), taking, opens);
    table = new JournalTable(journal, below::open);
    setTop(top());
    setCenter(table);
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

  /** Shows the entry with a number, and puts the keyboard on it. */
  void open(long number) {
    journal.open(number);
    table.requestFocus();
  }

  private HBox top() {
    search.setId("search-journal");
    search.setPromptText(Say.text("Search the journal"));
    search.setAccessibleText(Say.text("Search the journal"));
    search.textProperty().bindBidirectional(journal.searchProperty());
    search.getStyleClass().add("search");
    search.addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.DOWN && !table.getItems().isEmpty()) {
        pressed.consume();
        table.requestFocus();
        table.getSelectionModel().clearAndSelect(Math.max(0, table.getSelectionModel().getSelectedIndex()));
      }
    });
    Label summary = Labels.quiet(journal.summaryProperty());
    summary.setId("journal-summary");
    summary.setWrapText(false);
    HBox top = new HBox(Labels.title(Say.text("Journal")), search, summary);
    top.getStyleClass().add("screen-top");
    return top;
  }
}
