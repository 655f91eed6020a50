package hankbook.desktop;

import hankbook.cost.Charge;
import hankbook.cost.KeptPurchase;
import hankbook.cost.Purchase;
import hankbook.desktop.say.Say;
import hankbook.studio.Purchased;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What a purchase comes to: its table, the sum that must be what was paid, and how it was shared and turned. */
final class LandingPane extends VBox {
  private final LandingTable table = new LandingTable();
  private final Label sum = Labels.heading("");
  private final VBox notes = new VBox();

  /** @param id by which the sum is found */
  LandingPane(String id) {
    getStyleClass().add("landing-pane");
    notes.getStyleClass().add("landing-notes");
    sum.setId(id);
    getChildren().addAll(table, sum, notes);
    show(Optional.empty());
  }

  /** The sum, to be put where it is always seen. */
  Label sum() {
    return sum;
  }

  /** Shows a purchase, or nothing. */
  void show(Optional<Purchased> purchased) {
    List.of(this, sum).forEach(part -> {
      part.setManaged(purchased.isPresent());
      part.setVisible(purchased.isPresent());
    });
    purchased.ifPresent(this::show);
  }

  private void show(Purchased purchased) {
    KeptPurchase kept = purchased.kept();
    table.show(purchased);
    sum.setText(sum(kept));
    notes.getChildren().setAll(notes(kept).stream().map(Labels::quiet).toList());
  }

  /** Both sides of it: what was paid, and what its skeins cost together. */
  static String sum(KeptPurchase kept) {
    Purchase purchase = kept.landed().purchase();
    String skeins = Wording.money(kept.landed().total());
    String paid = PurchaseRow.total(purchase);
    return paid.equals(skeins)
        ? Say.count(purchase.skeins().size(), "Paid {1} = {2} for the skein.", "Paid {1} = {2} over the {0} skeins.", paid, skeins)
        : Say.count(purchase.skeins().size(), "Paid {1}, which is {2} for the skein.", "Paid {1}, which is {2} over the {0} skeins.", paid, skeins);
  }

  private static List<String> notes(KeptPurchase kept) {
    Purchase purchase = kept.landed().purchase();
    List<String> notes = new ArrayList<>();
    purchase.rate().ifPresent(rate -> notes.add(
        Say.text("What was paid in {0} is turned once, at {1} {2} for 1 {3} of {4}.", purchase.currency(), rate.text(), kept.landed().home(), purchase.currency(), rate.day())));
    if (purchase.lines().size() > 1) {
      List<String> shared = new ArrayList<>();
      shared("carriage", purchase.carriage(), shared);
      shared("duty", purchase.duty(), shared);
      shared("discount", purchase.discount(), shared);
      notes.add(shared.isEmpty()
          ? Say.text("Within a line each skein bears as much as it is long.")
          : Say.text("Shared over the lines: {0}. Within a line each skein bears as much as it is long.", String.join(", ", shared)));
    }
    if (!purchase.duty().amount().isZero()) {
      notes.add(Say.text("Whether duty or tax counts as cost, and whether any of it can be claimed back, is for your local rules and a licensed adviser to say."));
    }
    return notes;
  }

  private static void shared(String what, Charge charge, List<String> shared) {
    if (!charge.amount().isZero()) {
      shared.add(Say.text("{0} by {1}", what, Say.known(charge.basis().words())));
    }
  }
}
