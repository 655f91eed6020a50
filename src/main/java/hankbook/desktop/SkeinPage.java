package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The chosen skein's page: what it holds, where it lies, what was done with it, and what can be done. */
final class SkeinPage extends SidePage {
  private final SkeinPageModel model;
  private final Swatch swatch = Swatch.wide(64);
  private final Label name = Labels.title("");
  private final Label code = Labels.quiet("");
  private final FactList metres = new FactList();
  private final FactList facts = new FactList();
  private final StringProperty doubtful = new SimpleStringProperty("");
  private final VBox history = new VBox();

  SkeinPage(SkeinPageModel model, Recounting recounting, Sampling sampling, Parting parting, Runnable close) {
    super(close);
    this.model = model;
    history.getStyleClass().add("history");
    fill(
        swatch, heading(new VBox(name, code)), metres, Labels.fault(doubtful), new SkeinActs(recounting, sampling, parting), Labels.heading("About it"), facts,
        Labels.heading("What happened to it"), history);
    model.skeinProperty().subscribe(chosen -> chosen.ifPresent(this::show));
    model.history().addListener((ListChangeListener<SkeinEvent>) change -> showHistory());
  }

  private void show(SkeinRow row) {
    Skein skein = row.skein();
    swatch.show(skein.hex(), skein.yarn().colour());
    name.setText(skein.yarn().toString());
    code.setText(skein.code() + ", " + skein.form() + (skein.opened() ? ", opened" : ", not opened"));
    doubtful.set(SkeinFacts.doubtful(skein));
    showMetres(row);
    facts.clear();
    facts.add("Lot", skein.lot());
    facts.add("Place", skein.location());
    SkeinFacts.measures(skein, facts);
    facts.add("Fibre", skein.fibre());
    facts.add("Cost", skein.cost().map(cost -> cost.getAmount() + " " + cost.getCurrencyUnit().getCode()).orElse(""));
    facts.add("Received", skein.received().map(Object::toString).orElse(""));
  }

  private void showMetres(SkeinRow row) {
    metres.clear();
    metres.add("Holds", (row.held().text() + " " + row.sureness()).strip());
    metres.add("Known", SkeinFacts.known(row, model.history().stream().filter(SkeinEvent::isStandingRecount).findFirst()));
    metres.add("Free", row.free().text());
    each("Set aside for ", row.shelf().reserved());
    each("On the loom for ", row.shelf().onLoom());
  }

  private void each(String what, Map<String, Length> byPlan) {
    byPlan.forEach((plan, length) -> metres.add(what + plan, Wording.yarn(length)));
  }

  private void showHistory() {
    model.skeinProperty().get().ifPresent(this::showMetres);
    history.getChildren().setAll(model.history().stream().map(SkeinPage::event).toList());
  }

  private static Node event(SkeinEvent event) {
    Label what = new Label(event.what() + (event.takenBack() ? " (taken back)" : ""));
    what.getStyleClass().add("event");
    HBox top = new HBox(what, Labels.gap(), Labels.quiet(event.date()));
    VBox box = new VBox(top, Labels.quiet(event.detail()));
    Optional.of(event.note()).filter(note -> !note.isBlank()).map(Labels::quiet).ifPresent(box.getChildren()::add);
    return box;
  }
}
