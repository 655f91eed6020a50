package hankbook.desktop.guide;

import hankbook.desktop.say.Say;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;

/** The guide: its pages in a list, and beside it the chosen one. */
public final class GuideView extends BorderPane {
  private static final double LIST_PART = 0.3;

  private final Guide guide;
  private final Consumer<String> elsewhere;
  private final ListView<GuidePage> pages = new ListView<>();
  private final ScrollPane page = new ScrollPane();

  /** @param elsewhere is given the address of a link that leads out of the guide */
  public GuideView(Guide guide, Consumer<String> elsewhere) {
    this.guide = guide;
    this.elsewhere = elsewhere;
    getStyleClass().add("guide");
    getStylesheets().add(Objects.requireNonNull(GuideView.class.getResource("/hankbook/desktop/guide.css")).toExternalForm());
    pages.setId("guide-pages");
    pages.setAccessibleText(Say.text("Pages of the guide"));
    pages.setCellFactory(_ -> new PageCell());
    pages.getItems().setAll(guide.pages());
    pages.getSelectionModel().selectedItemProperty().subscribe(chosen -> {
      if (chosen != null) {
        show(chosen);
      }
    });
    page.setId("guide-page");
    page.setFitToWidth(true);
    page.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    SplitPane both = new SplitPane(pages, page);
    both.setDividerPositions(LIST_PART);
    SplitPane.setResizableWithParent(pages, false);
    setCenter(both);
    turnTo(Guide.FIRST);
  }

  /** Turns to a page by its file; stays where it is if the guide has none of that name. */
  public void turnTo(String file) {
    guide.page(file).ifPresent(found -> {
      pages.getSelectionModel().select(found);
      pages.scrollTo(found);
      pages.requestFocus();
    });
  }

  /** The file of the page that is shown. */
  String page() {
    return pages.getSelectionModel().getSelectedItem().file();
  }

  private void show(GuidePage chosen) {
    page.setContent(new GuideBody(chosen.text(), this::follow));
    page.setVvalue(0);
  }

  private void follow(String destination) {
    if (guide.page(destination).isPresent()) {
      turnTo(destination);
    } else {
      elsewhere.accept(destination);
    }
  }

  /** A title takes as many lines as it needs. */
  private static final class PageCell extends ListCell<GuidePage> {
    PageCell() {
      setWrapText(true);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(GuidePage page, boolean empty) {
      super.updateItem(page, empty);
      setText(empty || page == null ? "" : page.title());
    }
  }
}
