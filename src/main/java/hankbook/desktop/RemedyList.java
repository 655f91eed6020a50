package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.Remedy;
import hankbook.desktop.say.Say;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What would make a short plan fit, each with a button to try it, and a way back from what was tried; quietly below, what of the shelf is like
 * a short yarn but not enough, or what more it would allow.
 */
final class RemedyList extends VBox {
  private final PlanRemedies remedies;
  private final FitModel fit;

  RemedyList(PlanRemedies remedies, FitModel fit) {
    this.remedies = remedies;
    this.fit = fit;
    getStyleClass().add("plan-section");
    managedProperty().bind(visibleProperty());
    remedies.foundProperty().subscribe(_ -> show());
    remedies.triedProperty().subscribe(_ -> show());
    fit.fit().foundProperty().subscribe(_ -> show());
  }

  private void show() {
    getChildren().clear();
    remedies.triedProperty().get().ifPresent(tried -> getChildren().add(row(Say.text("Tried: {0}", Say.known(tried.words())), button(Say.text("Put back"), "put-back", remedies::putBack))));
    if (!remedies.found().isEmpty()) {
      Label heading = new Label(Say.text("What would fit"));
      heading.getStyleClass().addAll(Styles.TEXT_BOLD, "plan-heading");
      getChildren().add(heading);
    }
    for (Remedy remedy : remedies.found()) {
      getChildren().add(remedies.canBeTried(remedy)
          ? row(Wording.phrase(remedy.phrase()), button(Say.text("Try"), "try-" + remedy.change().key(), () -> remedies.attempt(remedy)))
          : row(Wording.phrase(remedy.phrase())));
    }
    remedies.notEnough().forEach(words -> getChildren().add(Labels.quiet(words)));
    if (!fit.surplus().isEmpty()) {
      getChildren().add(Labels.quiet(fit.surplus()));
    }
    setVisible(!getChildren().isEmpty());
  }

  private static Node row(String words, Node... act) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(label, Priority.ALWAYS);
    HBox row = new HBox(label);
    row.getChildren().addAll(act);
    row.getStyleClass().add("remedy-row");
    return row;
  }

  private static Button button(String words, String id, Runnable act) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> act.run());
    return button;
  }
}
