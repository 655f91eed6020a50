package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.Skein;
import java.util.Optional;
import java.util.function.Consumer;
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
  private final Consumer<String> openPlan;
  private final Swatch swatch = Swatch.wide(64);
  private final Label name = Labels.title("");
  private final Label code = Labels.quiet("");
  private final FactList metres = new FactList();
  private final FactList facts = new FactList();
  private final StringProperty doubtful = new SimpleStringProperty("");
  private final VBox history = new VBox();

  SkeinPage(SkeinPageModel model, SkeinDeeds deeds, Consumer<String> openPlan, Runnable close) {
    super(close);
    this.model = model;
    this.openPlan = openPlan;
    history.getStyleClass().add("history");
    fill(
        swatch, heading(new VBox(name, code)), metres, Labels.fault(doubtful), new SkeinActs(deeds), Labels.heading(Say.text("About it")), facts,
        Labels.heading(Say.text("What happened to it")), history);
    model.skeinProperty().subscribe(chosen -> chosen.ifPresent(this::show));
    model.history().addListener((ListChangeListener<SkeinEvent>) change -> showHistory());
  }

  private void show(SkeinRow row) {
    Skein skein = row.skein();
    swatch.show(skein.hex(), skein.yarn().colour());
    name.setText(skein.yarn().toString());
    code.setText(skein.opened() ? Say.text("{0}, {1}, opened", skein.code(), Say.known(skein.form().toString())) : Say.text("{0}, {1}, not opened", skein.code(), Say.known(skein.form().toString())));
    doubtful.set(SkeinFacts.doubtful(skein));
    showMetres(row);
    facts.clear();
    facts.add(Say.text("Lot"), skein.lot());
    facts.add(Say.text("Place"), skein.location());
    SkeinFacts.measures(skein, facts);
    facts.add(Say.text("Fibre"), skein.fibre());
    facts.add(Say.text("Cost"), skein.cost().map(cost -> Wording.money(cost)).orElse(""));
    facts.add(Say.text("Received"), skein.received().map(Object::toString).orElse(""));
  }

  private void showMetres(SkeinRow row) {
    metres.clear();
    metres.add(Say.text("Holds"), (row.held().text() + " " + row.sureness()).strip());
    metres.add(Say.text("Known"), SkeinFacts.known(row, model.history().stream().filter(SkeinEvent::isStandingRecount).findFirst()));
    metres.add(Say.text("Free"), row.free().text());
    row.shelf().reserved().forEach((plan, length) -> metres.add(Say.text("Set aside for {0}", plan), Wording.metres(length), "reserved-" + plan, () -> openPlan.accept(plan)));
    row.shelf().onLoom().forEach((plan, length) -> metres.add(Say.text("On the loom for {0}", plan), Wording.metres(length), "loom-" + plan, () -> openPlan.accept(plan)));
  }

  private void showHistory() {
    model.skeinProperty().get().ifPresent(this::showMetres);
    history.getChildren().setAll(model.history().stream().map(SkeinPage::event).toList());
  }

  private static Node event(SkeinEvent event) {
    Label what = new Label(event.takenBack() ? Say.text("{0} (taken back)", event.what()) : event.what());
    what.getStyleClass().add("event");
    HBox top = new HBox(what, Labels.gap(), Labels.quiet(event.date()));
    VBox box = new VBox(top, Labels.quiet(event.detail()));
    Optional.of(event.note()).filter(note -> !note.isBlank()).map(Labels::quiet).ifPresent(box.getChildren()::add);
    return box;
  }
}
