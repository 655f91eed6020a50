package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.studio.ToFinish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is left of each skein that was drawn, and of those that were touched by mistake. */
final class FoundSkeins extends VBox {
  private final AfterEditor editor;
  private final ToFinish ground;
  private final List<LeftoverCard> cards = new ArrayList<>();

  FoundSkeins(AfterEditor editor, ToFinish ground, ActualsDraft draft) {
    this.editor = editor;
    this.ground = ground;
    getStyleClass().add("plan-rows");
    List<DraftRow> rows = draft.rows(ActualsPart.LEFTOVERS);
    for (int row = 1; row <= rows.size(); row++) {
      getChildren().add(row(FoundRows.code(rows.get(row - 1)), row));
    }
    List<ToFinish.Taken> others = FoundRows.others(ground, draft);
    if (!others.isEmpty()) {
      getChildren().add(another(others));
    }
  }

  /** Shows what the draft has. */
  void show(ActualsDraft draft) {
    cards.forEach(card -> card.show(draft));
  }

  private Node row(String code, int row) {
    Optional<ToFinish.Taken> taken = FoundRows.taken(ground, code);
    if (taken.isEmpty()) {
      return stranger(code, row);
    }
    LeftoverCard card = new LeftoverCard(editor, taken.get(), row);
    cards.add(card);
    return card;
  }

  private Node stranger(String code, int row) {
    Button out = new Button(Say.text("Take out"));
    out.setId("take-out-" + code);
    out.getStyleClass().addAll("small", "flat");
    out.setOnAction(_ -> {
      editor.enter(FoundRows.without(editor.draftProperty().get(), ActualsPart.LEFTOVERS, row));
      editor.keep();
    });
    HBox line = new HBox(new Label(Say.text("{0} is of no yarn of this plan.", code)), out);
    line.getStyleClass().add("beside");
    return line;
  }

  private Node another(List<ToFinish.Taken> others) {
    ComboBox<String> choice = new ComboBox<>();
    others.forEach(taken -> choice.getItems().add(taken.drawn().code() + ", " + taken.drawn().yarn()));
    choice.setPromptText(Say.text("Another skein that was touched"));
    choice.setAccessibleText(Say.text("Another skein that was touched"));
    choice.setId("other-skein");
    choice.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(choice, Priority.ALWAYS);
    Button add = new Button(Say.text("Add it"));
    add.setId("add-skein");
    add.setMinWidth(USE_PREF_SIZE);
    add.disableProperty().bind(choice.valueProperty().isNull());
    add.setOnAction(_ -> {
      ToFinish.Taken chosen = others.get(choice.getSelectionModel().getSelectedIndex());
      editor.enter(FoundRows.with(editor.draftProperty().get(), ActualsPart.LEFTOVERS, FoundRows.begun(ground, chosen)));
      editor.keep();
    });
    HBox line = new HBox(choice, add);
    line.getStyleClass().add("reason-line");
    return line;
  }
}
