package hankbook.desktop;

import hankbook.cost.KeptPurchase;
import hankbook.cost.Purchase;
import hankbook.desktop.say.Say;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The chosen purchase: what was paid, where it went, and the ways to put it right. */
final class PurchasePage extends VBox {
  private final PurchasesModel model;
  private final Label title = Labels.title("");
  private final Label state = Labels.heading("");
  private final Label facts = Labels.quiet("");
  private final LandingPane landing = new LandingPane("shown-sum");

  PurchasePage(PurchasesModel model) {
    this.model = model;
    getStyleClass().add("purchase-page");
    title.setId("purchase-title");
    state.setId("purchase-state");
    Labels.showOnly(state, state.textProperty().map(text -> !text.isEmpty()));
    Button another = new Button(Say.text("Enter another"));
    another.setId("purchase-another");
    another.getStyleClass().addAll("flat", "small");
    another.setMinWidth(USE_PREF_SIZE);
    another.setOnAction(_ -> model.choose(Optional.empty()));
    HBox top = new HBox(title, Labels.gap(), another);
    top.getStyleClass().add("page-top");
    VBox body = new VBox(top, facts, state, landing);
    body.getStyleClass().add("side-body");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(scroll, foot());
    model.chosenProperty().subscribe(chosen -> chosen.ifPresent(this::show));
  }

  private void show(PurchaseRow row) {
    KeptPurchase kept = row.purchased().kept();
    Purchase purchase = kept.landed().purchase();
    title.setText(Say.text("Purchase {0}", kept.number()));
    facts.setText(purchase.from().isEmpty()
        ? Say.text("Bought on {0}, written down by {1}.", purchase.date(), kept.author())
        : Say.text("Bought on {0} from {1}, written down by {2}.", purchase.date(), purchase.from(), kept.author()));
    state.setText(state(kept));
    landing.show(Optional.of(row.purchased()));
  }

  private static String state(KeptPurchase kept) {
    String why = kept.reason();
    if (!kept.stands()) {
      return why.isEmpty()
          ? Say.text("Taken back. Its skeins cost again what was said before it.")
          : Say.text("Taken back: {0}. Its skeins cost again what was said before it.", why);
    }
    if (kept.version() == 1) {
      return "";
    }
    return why.isEmpty()
        ? Say.text("Corrected. What was said before is kept in the ledger; this is version {0}.", kept.version())
        : Say.text("Corrected: {0}. What was said before is kept in the ledger; this is version {1}.", why, kept.version());
  }

  private Node foot() {
    ActButton correct = new ActButton(Say.text("Correct it"), model::correct, model.correctAct().possibleProperty(),
        model.correctAct().whyNotProperty()).named("correct-purchase").main();
    TextField reason = new TextField();
    reason.setId("take-back-reason");
    reason.setPromptText(Say.text("Why it is taken back"));
    reason.setAccessibleText(Say.text("Why it is taken back"));
    reason.textProperty().bindBidirectional(model.reasonProperty());
    reason.setOnAction(_ -> model.takeBack());
    ActButton back = new ActButton(Say.text("Take it back"), model::takeBack, model.takeBackAct().possibleProperty(),
        model.takeBackAct().whyNotProperty()).named("take-back-purchase").after(reason);
    VBox foot = new VBox(correct, back);
    foot.getStyleClass().add("side-foot");
    return foot;
  }
}
