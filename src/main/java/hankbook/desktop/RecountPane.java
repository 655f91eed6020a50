package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where the chosen skein is measured again: by which way, what was found, and what that changes. */
final class RecountPane extends VBox {
  private final Recounting model;
  private final RecountFields fields;

  RecountPane(Recounting model) {
    this.model = model;
    this.fields = model.fields();
    FieldBox note = new FieldBox(Say.text("Note"), Say.text("how it was measured"), model.noteProperty(), new SimpleStringProperty("")).named("recount-note");
    ActButton act = new ActButton(Say.text("Write down the measure"), model::record, model.act().possibleProperty(), model.act().whyNotProperty()).named("recount");
    getChildren().addAll(
        ways(), Labels.quiet(Say.text("The whole skein as it is now, with what is set aside for plans, without what is on a loom.")),
        only(RecountWay.LENGTH, field(Say.text("The whole skein measures now"), "1420 m", fields.found, "recount-length")),
        only(RecountWay.WEIGHT, weight()),
        only(RecountWay.TURNS, FieldBox.pair(field(Say.text("Turns now"), "710", fields.turns, "recount-turns"), field(Say.text("Once round the reel"), "2 m", fields.reel, "recount-reel"))),
        comparison(), note, act);
  }

  private Node ways() {
    ToggleGroup group = new ToggleGroup();
    List<Node> buttons = new ArrayList<>();
    for (RecountWay way : RecountWay.values()) {
      ToggleButton button = new ToggleButton(way.toString());
      button.setId("recount-by-" + way.name().toLowerCase(Locale.ROOT));
      button.setToggleGroup(group);
      button.getStyleClass().add("way-choice");
      fields.way.subscribe(now -> button.setSelected(now == way));
      button.setOnAction(_ -> {
        button.setSelected(true);
        fields.way.set(way);
      });
      buttons.add(button);
    }
    HBox ways = new HBox();
    ways.getChildren().setAll(buttons);
    ways.getStyleClass().add("way-choices");
    return ways;
  }

  private Node weight() {
    return new VBox(
        8, FieldBox.pair(field(Say.text("It weighs now"), "92 g", fields.gross, "recount-gross"), field(Say.text("Of that its cone"), "38 g", fields.tare, "recount-tare")),
        field(Say.text("Moisture in it now, where measured"), Say.text("the usual of its fibre"), fields.regain, "recount-regain"));
  }

  private Node comparison() {
    Label before = new Label();
    before.textProperty().bind(model.ledgerSaysProperty());
    Label after = new Label();
    after.setId("recount-after");
    after.textProperty().bind(model.wouldSayProperty().map(text -> text.isEmpty() ? "–" : text));
    Label reading = Labels.steady(model.readingProperty(), 2);
    reading.setId("recount-reading");
    Label words = Labels.quiet(fields.way.map(RecountWay::words));
    return new VBox(6, words, line(Say.text("In the ledger"), before), line(Say.text("Would be"), after), reading);
  }

  static Node line(String name, Label value) {
    return new HBox(Labels.quiet(name), Labels.gap(), value);
  }

  private FieldBox field(String name, String example, Typed<?> typed, String id) {
    FieldBox box = new FieldBox(name, example, typed.textProperty(), typed.messageProperty()).named(id).quantity().withoutMessage();
    box.field().setOnAction(_ -> model.record());
    return box;
  }

  private Node only(RecountWay way, Node part) {
    Labels.showOnly(part, fields.way.map(now -> now == way));
    return part;
  }
}
