package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import java.util.OptionalLong;
import javafx.scene.control.Button;

/** Gives the warp as many ends as its order makes; to be seen only where these differ. */
final class EndsFromOrder extends Button {
  private static final PlanField SELVEDGE = PlanField.of(PlanPart.SELVEDGE, "yarn");

  private final PlanEditor editor;

  EndsFromOrder(PlanEditor editor) {
    this.editor = editor;
    setId("ends-from-order");
    getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    managedProperty().bind(visibleProperty());
    editor.answerProperty().subscribe(this::offer);
    setOnAction(_ -> made(editor.answerProperty().get()).ifPresent(editor::takeEnds));
  }

  private void offer(PlanAnswer answer) {
    OptionalLong made = made(answer);
    setVisible(made.isPresent());
    String selvedges = editor.draftProperty().get().text(SELVEDGE).isBlank() ? "" : " with the selvedges";
    setText(made.isPresent() ? "Take the ends from the order: " + made.getAsLong() + selvedges : "");
  }

  private static OptionalLong made(PlanAnswer answer) {
    return answer instanceof PlanAnswer.Unfinished unfinished ? unfinished.endsInOrder() : OptionalLong.empty();
  }
}
