package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Where a sample of the chosen skein's yarn is weighed: what grist it comes to, and what that says of the skeins that lie there. */
final class SamplePane extends VBox {
  private final Sampling model;

  SamplePane(Sampling model) {
    this.model = model;
    SampleFields fields = model.fields();
    Label rules = Labels.quiet(model.rulesProperty());
    rules.setId("sample-rules");
    Label found = new Label();
    found.setId("sample-found");
    found.textProperty().bind(model.foundProperty().map(text -> text.isEmpty() ? "–" : text));
    Label against = Labels.steady(model.againstProperty(), 2);
    Label recounts = Labels.quiet(model.recountsProperty());
    recounts.setId("sample-recounts");
    ActButton use = new ActButton(Say.text("Use this grist"), model::useIt, model.using().possibleProperty(), model.using().whyNotProperty()).named("use-grist");
    ActButton forget = new ActButton(Say.text("Go by the yarn number"), model::forgetIt, model.forgetting().possibleProperty(), model.forgetting().whyNotProperty()).named("forget-grist");
    Labels.showOnly(forget, model.knownProperty());
    getChildren().addAll(
        rules,
        FieldBox.pair(field(Say.text("Its length"), "10 m", fields.length, "sample-length"), field(Say.text("Its weight"), "0.63 g", fields.mass, "sample-mass")),
        FieldBox.pair(
            usual(field(Say.text("Balance steps"), "", fields.division, "sample-division"), model.usualDivisionProperty()),
            usual(field(Say.text("Length within"), "", fields.within, "sample-within"), model.usualWithinProperty())),
        RecountPane.line(Say.text("Its own grist"), found), against, use, recounts, forget);
  }

  private FieldBox field(String name, String example, Typed<?> typed, String id) {
    FieldBox box = new FieldBox(name, example, typed.textProperty(), typed.messageProperty()).named(id).quantity().withoutMessage();
    box.field().setOnAction(_ -> model.useIt());
    return box;
  }

  private static FieldBox usual(FieldBox box, ObservableValue<String> usual) {
    box.field().promptTextProperty().bind(usual.map(TypedText::shown));
    return box;
  }
}
