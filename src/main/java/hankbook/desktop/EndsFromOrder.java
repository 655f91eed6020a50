package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
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
    boolean selvedges = !editor.draftProperty().get().text(SELVEDGE).isBlank();
    setText(made.isPresent() ? words(made.getAsLong(), selvedges) : "");
  }

  private static String words(long ends, boolean selvedges) {
    return selvedges ? Say.text("Take the ends from the order: {0} with the selvedges", ends) : Say.text("Take the ends from the order: {0}", ends);
  }

  private static OptionalLong made(PlanAnswer answer) {
    return answer instanceof PlanAnswer.Unfinished unfinished ? unfinished.endsInOrder() : OptionalLong.empty();
  }
}
