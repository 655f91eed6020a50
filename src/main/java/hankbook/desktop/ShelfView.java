package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The shelf: its skeins by yarn and colour, one by one or as a wall, and beside them the chosen skein's page, the form for receiving one, or a colour that is picked. */
public final class ShelfView extends BorderPane {
  private static final Insets BESIDE = new Insets(0, 0, 0, 12);

  private final ShelfModel shelf;
  private final TextField search = new TextField();
  private final SkeinPage page;
  private final ReceivePage receiving;
  private final NearColourPage near;
  private final ShelfLooks looks;
  private final GroupTable groups;
  private final SwatchWall wall;

  /**
   * @param work on photographs
   * @param remembered how the shelf was looked at
   */
  public ShelfView(
      ShelfModel shelf, SkeinPageModel skein, SkeinDeeds deeds, Consumer<String> openPlan, ReceiveModel receive, Runnable waysIn, Work work, Remembered remembered) {
    this.shelf = shelf;
    page = new SkeinPage(skein, deeds, openPlan, () -> shelf.choose(Optional.empty()));
    receiving = new ReceivePage(receive, this::closeBeside);
    near = new NearColourPage(shelf.groups(), work, this::closeBeside);
    looks = new ShelfLooks(shelf, remembered, this::pick);
    groups = new GroupTable(shelf);
    wall = new SwatchWall(shelf.groups(), this::open);
    for (Node beside : new Node[] {page, receiving, near}) {
      BorderPane.setMargin(beside, BESIDE);
    }
    getStyleClass().add("screen");
    setTop(top());
    setCenter(centre(waysIn));
    shelf.chosenProperty().subscribe(chosen -> {
      skein.turnTo(chosen);
      deeds.turnTo(chosen);
      if ((chosen.isPresent() && !shelf.isBeingShown()) || getRight() == page) {
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

  private void pick() {
    setRight(near);
    near.begin();
  }

  private void closeBeside() {
    setRight(null);
  }

  /** Shows the skeins of a yarn and colour. */
  private void open(GroupRow row) {
    looks.lookProperty().set(ShelfLook.GROUPS);
    groups.open(row);
  }

  private Node centre(Runnable waysIn) {
    SkeinTable skeins = new SkeinTable(shelf);
    Label missing = Labels.quiet(wall.missingProperty());
    VBox hung = new VBox(wall, missing);
    hung.getStyleClass().add("wall-box");
    VBox.setVgrow(wall, Priority.ALWAYS);
    looks.lookProperty().subscribe(look -> {
      groups.setVisible(look == ShelfLook.GROUPS);
      skeins.setVisible(look == ShelfLook.SKEINS);
      hung.setVisible(look == ShelfLook.WALL);
      wall.setVisible(look == ShelfLook.WALL);
    });
    return new StackPane(groups, skeins, hung, new ShelfNothing(shelf, waysIn, this::receive));
  }

  private Node top() {
    search.setId("search-shelf");
    search.setPromptText(Say.text("Search: wool blue {0} lot:7 opened", Wording.example(">200 m")));
    search.setAccessibleText(Say.text("Search the shelf"));
    search.accessibleHelpProperty().bind(shelf.faultsProperty());
    search.setTooltip(new Tooltip(ShelfAsking.help()));
    search.textProperty().bindBidirectional(shelf.searchProperty());
    search.getStyleClass().addAll("search", "shelf-search");
    HBox.setHgrow(search, Priority.ALWAYS);
    Label summary = Labels.quiet(shelf.summaryProperty());
    summary.setId("shelf-summary");
    summary.setWrapText(false);
    summary.setMinWidth(USE_PREF_SIZE);
    Button receive = new Button(Say.text("Receive a skein"));
    receive.setId("open-receive");
    receive.setMinWidth(USE_PREF_SIZE);
    receive.setOnAction(_ -> receive());
    Label title = Labels.title(Say.text("Shelf"));
    title.setMinWidth(USE_PREF_SIZE);
    HBox line = new HBox(title, search, summary, Labels.gap(), receive);
    line.getStyleClass().add("shelf-line");
    Label faults = Labels.fault(shelf.faultsProperty());
    faults.setId("shelf-faults");
    VBox top = new VBox(line, faults, looks);
    top.getStyleClass().add("shelf-top");
    return top;
  }
}
