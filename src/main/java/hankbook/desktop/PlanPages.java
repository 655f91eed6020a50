package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.studio.PlanStep;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What is said of the plan that is open: its verdict, and below it one page at a time. */
final class PlanPages extends VBox {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final PlansModel model;
  private final HBox headline = new HBox();
  private final ToggleGroup chosen = new ToggleGroup();

  /**
   * @param pages in the order in which they are offered; the first is shown at first
   */
  PlanPages(PlansModel model, List<PlanPage> pages) {
    this.model = model;
    FlowPane choices = new FlowPane();
    choices.getStyleClass().add("plan-page-choices");
    StackPane shown = new StackPane();
    shown.getChildren().addAll(pages);
    pages.forEach(page -> choices.getChildren().add(choice(page)));
    headline.getStyleClass().add("plan-headline");
    getStyleClass().add("plan-pages");
    getChildren().addAll(headline, new PlanStepBar(model.life()), choices, shown);
    pages.getFirst().setVisible(true);
    chosen.selectToggle(chosen.getToggles().getFirst());
    model.editor().answerProperty().subscribe(_ -> tell());
    model.life().stepsProperty().subscribe(_ -> tell());
    model.editor().reckoningProperty().subscribe(reckoning -> headline.pseudoClassStateChanged(STALE, reckoning));
  }

  private ToggleButton choice(PlanPage page) {
    ToggleButton choice = new ToggleButton(page.name());
    choice.setId("plan-page-" + page.id());
    choice.getStyleClass().addAll(Styles.SMALL, Styles.FLAT, "plan-page-choice");
    choice.setToggleGroup(chosen);
    choice.setOnAction(_ -> choice.setSelected(true));
    choice.selectedProperty().subscribe(page::setVisible);
    return choice;
  }

  /** A plan that is over is neither covered nor short: its yarn is in the cloth. */
  private void tell() {
    if (isOver(model.life().stepsProperty().get())) {
      headline.getChildren().setAll(squared(), words(Say.text("Its cloth is cut off and its book squared. Below stands what weaving it once more would take.")));
      return;
    }
    switch (model.editor().answerProperty().get()) {
      case PlanAnswer.Reckoning reckoning -> tell(reckoning.standing(), Say.text("Reckoning."));
      case PlanAnswer.Unfinished unfinished -> tell(unfinished.standing(), unfinished.words());
      case PlanAnswer.Reckoned reckoned -> tell(reckoned.standing(), PlanWords.verdict(reckoned.standing(), reckoned.check()));
    }
  }

  private static boolean isOver(List<PlanStep> life) {
    return !life.isEmpty() && life.getLast().state() == PlanStep.State.NOW;
  }

  private static Label squared() {
    Label word = new Label(Say.text("squared"), new PlanStepMark(PlanStep.State.DONE));
    word.getStyleClass().addAll(Styles.TITLE_3, "standing", "standing-squared");
    word.setMinWidth(USE_PREF_SIZE);
    word.setId("plan-verdict");
    return word;
  }

  private static Label words(String words) {
    Label why = PlanPage.text(words, "plan-verdict-words");
    HBox.setHgrow(why, Priority.ALWAYS);
    return why;
  }

  private void tell(Standing standing, String words) {
    Label word = StandingMark.labelled(standing);
    word.getStyleClass().add(Styles.TITLE_3);
    word.setId("plan-verdict");
    headline.getChildren().setAll(word, words(words));
  }
}
