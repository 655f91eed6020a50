package hankbook.desktop;

import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** What can be done with the chosen skein, each act folded away until it is wanted. */
final class SkeinActs extends VBox {
  SkeinActs(Recounting recounting, Parting parting) {
    getStyleClass().add("acts");
    getChildren().addAll(folded("measure-again", "Measure again", measureAgain(recounting)), folded("part-with", "Part with", partWith(parting)));
  }

  private static Node measureAgain(Recounting model) {
    FieldBox found =
        new FieldBox("The whole skein measures now", "1420 m", model.found().textProperty(), model.found().messageProperty()).named("recount-length");
    FieldBox note = new FieldBox("Note", "how it was measured", model.noteProperty(), new SimpleStringProperty("")).named("recount-note");
    found.field().setOnAction(event -> model.record());
    ActButton act = new ActButton("Write down the measure", model::record, model.act().possibleProperty(), model.act().whyNotProperty()).named("recount");
    return new VBox(
        Labels.quiet("With what is set aside for plans, without what is on a loom."), found, Labels.quiet(model.readingProperty()), note, act);
  }

  private static Node partWith(Parting model) {
    FieldBox length = new FieldBox("How much leaves", "50 m", model.length().textProperty(), model.length().messageProperty()).named("part-length");
    FieldBox note = new FieldBox("Where to", "sold, given, lost", model.noteProperty(), new SimpleStringProperty("")).named("part-note");
    length.field().setOnAction(event -> model.record());
    ActButton act = new ActButton("Part with yarn", model::record, model.act().possibleProperty(), model.act().whyNotProperty()).named("part");
    return new VBox(length, note, act);
  }

  private static TitledPane folded(String id, String name, Node content) {
    content.getStyleClass().add("act-body");
    TitledPane pane = new TitledPane(name, content);
    pane.setId(id);
    pane.setExpanded(false);
    pane.setAnimated(false);
    return pane;
  }
}
