package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** What yarn cost: the purchases, and the value of what there is of it, one page at a time. */
public final class CostsView extends BorderPane {
  private final PurchasesPage purchases;
  private final List<CostsPage> pages;
  private final ToggleGroup chosen = new ToggleGroup();

  public CostsView(PurchasesModel purchases, ValueModel value) {
    this.purchases = new PurchasesPage(purchases);
    pages = List.of(this.purchases, new ValuePage(value, this::enter));
    getStyleClass().add("screen");
    StackPane shown = new StackPane();
    shown.getChildren().addAll(pages);
    setTop(top());
    setCenter(shown);
    chosen.selectToggle(chosen.getToggles().getFirst());
  }

  /** Lets the page that is shown ask the ledger anew. */
  public void refresh() {
    page().refresh();
  }

  /** Puts the keyboard where the things of the page are looked for. */
  public void search() {
    page().search();
  }

  private void enter() {
    chosen.selectToggle(chosen.getToggles().getFirst());
    purchases.refresh();
    purchases.enter();
  }

  private CostsPage page() {
    return pages.stream().filter(Node::isVisible).findFirst().orElseGet(pages::getFirst);
  }

  private Node top() {
    FlowPane choices = new FlowPane();
    choices.getStyleClass().add("costs-choices");
    pages.forEach(page -> choices.getChildren().add(choice(page)));
    HBox top = new HBox(Labels.title(Say.text("Costs")), choices);
    top.getStyleClass().add("screen-top");
    return top;
  }

  private ToggleButton choice(CostsPage page) {
    ToggleButton choice = new ToggleButton(page.name());
    choice.setId("costs-" + page.key());
    choice.getStyleClass().addAll(Styles.FLAT, "costs-choice");
    choice.setToggleGroup(chosen);
    choice.setOnAction(_ -> turnTo(choice, page));
    choice.selectedProperty().subscribe(page::setVisible);
    return choice;
  }

  private static void turnTo(ToggleButton choice, CostsPage page) {
    choice.setSelected(true);
    page.refresh();
    page.search();
  }
}
