package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What can be done with the chosen skein, each act folded away until it is wanted. */
final class SkeinActs extends VBox {
  SkeinActs(SkeinDeeds deeds) {
    getStyleClass().add("acts");
    TitledPane windOff = folded("wind-off", Say.text("Wind off into two"), RewindPanes.windOff(deeds.windingOff()));
    windOff.expandedProperty().subscribe(deeds.windingOff()::watch);
    TitledPane join = folded("join-two", Say.text("Join with another"), RewindPanes.join(deeds.joining()));
    join.expandedProperty().subscribe(deeds.joining()::watch);
    TitledPane back = folded("return-yarn", Say.text("Return from the loom"), returning(deeds.returning()));
    Labels.showOnly(back, deeds.returning().thereProperty().map(there -> !there.isEmpty()));
    getChildren().addAll(
        folded("measure-again", Say.text("Measure again"), new RecountPane(deeds.recounting())), folded("move", Say.text("Move"), moving(deeds.moving())), windOff, join, back,
        folded("part-with", Say.text("Part with"), partWith(deeds.parting())), folded("describe", Say.text("Change lot, cost or day"), describing(deeds.describing())),
        folded("weigh-sample", Say.text("Weigh a sample of the yarn"), new SamplePane(deeds.sampling())));
  }

  private static Node partWith(Parting model) {
    FieldBox length = new FieldBox(Say.text("How much leaves"), "50 m", model.length().textProperty(), model.length().messageProperty()).named("part-length").quantity();
    FieldBox note = FieldBox.plain(Say.text("Where to"), Say.text("sold, given, lost"), model.noteProperty()).named("part-note");
    length.field().setOnAction(_ -> model.record());
    ActButton act = new ActButton(Say.text("Part with yarn"), model::record, model.act().possibleProperty(), model.act().whyNotProperty()).named("part");
    return new VBox(length, note, act);
  }

  private static Node moving(Moving model) {
    FieldBox place = FieldBox.plain(Say.text("New place"), Say.text("Shelf 2, left"), model.placeProperty()).named("move-place");
    place.field().setOnAction(_ -> model.move());
    FieldBox codes = new FieldBox(Say.text("Which skeins"), "", model.codesProperty(), model.codesMessageProperty()).named("move-codes").withoutMessage();
    codes.field().setOnAction(_ -> model.move());
    Button lot = small("move-lot", Say.text("All of its lot"), model::withItsLot);
    Button all = small("move-all", Say.text("All that lie with it"), model::withItsPlace);
    FlowPane more = new FlowPane(6, 6, lot, all);
    ActButton act = new ActButton("", model::move, model.act().possibleProperty(), model.act().whyNotProperty()).named("move-act");
    act.words(model.wordsProperty());
    return new VBox(place, codes, more, act);
  }

  private static Button small(String id, String words, Runnable doing) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().add("small");
    button.setOnAction(_ -> doing.run());
    return button;
  }

  private static Node describing(Describing model) {
    FieldBox lot = FieldBox.plain(Say.text("Lot"), "", model.lotProperty()).named("describe-lot");
    FieldBox cost = new FieldBox(Say.text("Cost"), "24.50 EUR", model.cost().textProperty(), model.cost().messageProperty()).named("describe-cost").quantity().withoutMessage();
    FieldBox day = new FieldBox(Say.text("Received"), "2026-03-14", model.received().textProperty(), model.received().messageProperty()).named("describe-received").withoutMessage();
    for (FieldBox box : new FieldBox[] {lot, cost, day}) {
      box.field().setOnAction(_ -> model.write());
    }
    ActButton act = new ActButton(Say.text("Write it down"), model::write, model.act().possibleProperty(), model.act().whyNotProperty()).named("describe-act");
    return new VBox(lot, FieldBox.pair(cost, day), act);
  }

  private static Node returning(Returning model) {
    ComboBox<String> plan = new ComboBox<>(model.plans());
    plan.setId("return-plan");
    model.planProperty().subscribe(name -> plan.setValue(name.orElse(null)));
    plan.setOnAction(_ -> model.choose(plan.getValue()));
    FieldBox length = new FieldBox(Say.text("How much comes back"), "50 m", model.length().textProperty(), model.length().messageProperty()).named("return-length").quantity().withoutMessage();
    length.field().setOnAction(_ -> model.record());
    ActButton act = new ActButton(Say.text("Return to the shelf"), model::record, model.act().possibleProperty(), model.act().whyNotProperty()).named("return");
    return new VBox(RewindPanes.named(Say.text("From the loom of"), plan), Labels.quiet(model.thereProperty()), length, act);
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
