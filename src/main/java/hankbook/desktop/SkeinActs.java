package hankbook.desktop;

import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** What can be done with the chosen skein, each act folded away until it is wanted. */
final class SkeinActs extends VBox {
  SkeinActs(Recounting recounting, Sampling sampling, Parting parting) {
    getStyleClass().add("acts");
    getChildren().addAll(
        folded("measure-again", "Measure again", new RecountPane(recounting)), folded("weigh-sample", "Weigh a sample of the yarn", new SamplePane(sampling)),
        folded("part-with", "Part with", partWith(parting)));
  }

  private static Node partWith(Parting model) {
    FieldBox length = new FieldBox("How much leaves", "50 m", model.length().textProperty(), model.length().messageProperty()).named("part-length").quantity();
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
