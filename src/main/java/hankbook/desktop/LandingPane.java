package hankbook.desktop;

import hankbook.cost.Charge;
import hankbook.cost.KeptPurchase;
import hankbook.cost.Purchase;
import hankbook.studio.Purchased;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What a purchase comes to: its table, the sum that must be what was paid, and how it was shared and turned. */
final class LandingPane extends VBox {
  private static final String CAUTION =
      "Whether duty or tax counts as cost, and whether any of it can be claimed back, is for your local rules and a licensed adviser to say.";

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
    return "Paid " + paid + (paid.equals(skeins) ? " = " : ", which is ") + skeins + (purchase.skeins().size() == 1 ? " for the skein." : " over the " + purchase.skeins().size() + " skeins.");
  }

  private static List<String> notes(KeptPurchase kept) {
    Purchase purchase = kept.landed().purchase();
    List<String> notes = new ArrayList<>();
    purchase.rate().ifPresent(rate -> notes.add(
        "What was paid in " + purchase.currency() + " is turned once, at " + rate.text() + " " + kept.landed().home() + " for 1 " + purchase.currency() + " of " + rate.day() + "."));
    if (purchase.lines().size() > 1) {
      List<String> shared = new ArrayList<>();
      shared("carriage", purchase.carriage(), shared);
      shared("duty", purchase.duty(), shared);
      shared("discount", purchase.discount(), shared);
      notes.add((shared.isEmpty() ? "" : "Shared over the lines: " + String.join(", ", shared) + ". ") + "Within a line each skein bears as much as it is long.");
    }
    if (!purchase.duty().amount().isZero()) {
      notes.add(CAUTION);
    }
    return notes;
  }

  private static void shared(String what, Charge charge, List<String> shared) {
    if (!charge.amount().isZero()) {
      shared.add(what + " by " + charge.basis().words());
    }
  }
}
