package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.plan.WorkKind;
import hankbook.reckon.Actuals;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.VBox;

/** What was found after a cloth, as it was said. */
final class FoundFacts extends VBox {
  private final FactList facts = new FactList();

  FoundFacts(Actuals actuals) {
    ActualsDraft said = ActualsDraft.of(new ActualsFile(Optional.empty(), actuals).json());
    said.rows(ActualsPart.LEFTOVERS).forEach(row -> facts.add(Say.text("Left of {0}", FoundRows.code(row)), left(row)));
    bundles(Say.text("Thrums"), said.rows(ActualsPart.THRUMS));
    bundles(Say.text("Samples"), said.rows(ActualsPart.SAMPLES));
    for (FoundField field : FoundField.values()) {
      add(field.caption(), said.text(field.part(), 1, field.key()));
    }
    for (WorkKind kind : WorkKind.values()) {
      add(Say.text("{0}, hours", AfterWords.begin(Say.known(kind.key()))), said.text(ActualsPart.HOURS, 1, kind.key()));
    }
    facts.setMaxWidth(460);
    getChildren().add(facts);
  }

  private void bundles(String name, List<DraftRow> rows) {
    rows.forEach(row -> {
      String of = row.text("yarn").isEmpty() ? Say.text("of all warp yarns") : Say.text("of {0} {1}", row.text("yarn"), row.text("colour"));
      facts.add(name + of, row.text("mass") + row.text("length"));
    });
  }

  private void add(String name, String value) {
    if (!value.isEmpty()) {
      facts.add(name, value);
    }
  }

  private static String left(DraftRow row) {
    return switch (LeftWay.of(row).orElse(LeftWay.USED_UP)) {
      case USED_UP -> Say.text("nothing, used up");
      case LENGTH -> row.text("left");
      case WEIGHT -> row.text("regain").isEmpty()
          ? Say.text("{0} gross, {1} tare", row.text("gross"), row.text("tare"))
          : Say.text("{0} gross, {1} tare, moisture {2}", row.text("gross"), row.text("tare"), row.text("regain"));
      case TURNS -> Say.text("{0} turns of {1}", row.text("turns"), row.text("reel"));
    };
  }
}
