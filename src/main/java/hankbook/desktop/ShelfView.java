package hankbook.desktop;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/** The shelf: the table of skeins, and beside it either the chosen skein's page or the form for receiving one. */
public final class ShelfView extends BorderPane {
  private static final Insets BESIDE = new Insets(0, 0, 0, 12);

  private final ShelfModel shelf;
  private final TextField search = new TextField();
  private final SkeinPage page;
  private final ReceivePage receiving;

  public ShelfView(ShelfModel shelf, SkeinPageModel skein, SkeinDeeds deeds, Consumer<String> openPlan, ReceiveModel receive, Runnable waysIn) {
    this.shelf = shelf;
    page = new SkeinPage(skein, deeds, openPlan, () -> shelf.choose(Optional.empty()));
    receiving = new ReceivePage(receive, this::stopReceiving);
    BorderPane.setMargin(page, BESIDE);
    BorderPane.setMargin(receiving, BESIDE);
    getStyleClass().add("screen");
    setTop(top());
    setCenter(new SkeinTable(shelf, waysIn));
    shelf.chosenProperty().subscribe(chosen -> {
      skein.turnTo(chosen);
      deeds.turnTo(chosen);
      if (chosen.isPresent() || getRight() != receiving) {
        setRight(chosen.isPresent() ? page : null);
      }
    });
  }

  /** Puts the keyboard into the search. */
  public void search() {
    search.requestFocus();
    search.selectAll();
  }

  /** Opens the form for receiving a skein. */
  public void receive() {
    shelf.choose(Optional.empty());
    setRight(receiving);
    receiving.begin();
  }

  private void stopReceiving() {
    setRight(null);
  }

  private HBox top() {
    search.setId("search-shelf");
    search.setPromptText("Search the shelf");
    search.setAccessibleText("Search the shelf");
    search.textProperty().bindBidirectional(shelf.searchProperty());
    search.getStyleClass().add("search");
    Label summary = Labels.quiet(shelf.summaryProperty());
    summary.setId("shelf-summary");
    summary.setWrapText(false);
    Button receive = new Button("Receive a skein");
    receive.setId("open-receive");
    receive.setOnAction(event -> receive());
    HBox top = new HBox(Labels.title("Shelf"), search, summary, Labels.gap(), receive);
    top.getStyleClass().add("screen-top");
    return top;
  }
}
