package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What was paid: the purchases, and beside them the form for another one, the chosen one, or its correction. */
final class PurchasesPage extends CostsPage {
  private static final double LIST = 0.45;

  private final PurchasesModel model;
  private final PurchaseTable table;
  private final PurchaseFormPage another;
  private final PurchaseFormPage correction;
  private final PurchasePage shown;

  PurchasesPage(PurchasesModel model) {
    super("purchases", Say.text("Purchases"));
    this.model = model;
    table = new PurchaseTable(model);
    another = new PurchaseFormPage(model.another(), "purchase");
    correction = new PurchaseFormPage(model.correction(), "correction");
    shown = new PurchasePage(model);
    Label summary = Labels.quiet(model.summaryProperty());
    summary.setId("purchases-summary");
    Button enter = new Button(Say.text("Enter a purchase"));
    enter.setId("enter-another");
    enter.setMinWidth(USE_PREF_SIZE);
    enter.setOnAction(_ -> enter());
    HBox top = new HBox(summary, Labels.gap(), enter);
    top.getStyleClass().add("reason-line");
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox list = new VBox(top, table);
    list.getStyleClass().add("costs-list");
    SplitPane both = new SplitPane(list, new StackPane(another, correction, shown));
    both.setId("purchases-split");
    both.setDividerPositions(LIST);
    VBox.setVgrow(both, Priority.ALWAYS);
    getChildren().add(both);
    model.chosenProperty().subscribe(_ -> turn());
    model.correction().correctedProperty().subscribe((_, corrected) -> {
      turn();
      if (corrected.isPresent()) {
        correction.begin();
      }
    });
  }

  @Override
  void refresh() {
    model.refresh();
  }

  @Override
  void search() {
    table.requestFocus();
  }

  /** Opens the form for another purchase. */
  void enter() {
    model.choose(Optional.empty());
    another.begin();
  }

  private void turn() {
    Optional<Integer> chosen = model.chosenProperty().get().map(PurchaseRow::number);
    Optional<Integer> corrected = model.correction().correctedProperty().get().map(one -> one.kept().number());
    another.setVisible(chosen.isEmpty());
    correction.setVisible(chosen.isPresent() && chosen.equals(corrected));
    shown.setVisible(chosen.isPresent() && !chosen.equals(corrected));
  }
}
