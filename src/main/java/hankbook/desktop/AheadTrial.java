package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanMove;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuedPlan;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What the order that is tried would change. */
final class AheadTrial extends VBox {
  private final Label what = Labels.heading("");
  private final VBox changes = new VBox();

  AheadTrial(AheadModel model) {
    setId("ahead-trial");
    getStyleClass().add("ahead-trial");
    changes.setId("ahead-changes");
    changes.getStyleClass().add("ahead-changes");
    ScrollPane scroll = new ScrollPane(changes);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("ahead-scroll");
    getChildren().addAll(what, scroll);
    Labels.showOnly(this, model.triedProperty().map(Optional::isPresent));
    model.triedProperty().subscribe(tried -> tried.ifPresent(move -> what.setText(words(move))));
    model.aheadProperty().subscribe(ahead -> show(ahead.changes()));
  }

  private static String words(PlanMove move) {
    return move.before()
        ? Say.text("If {0} takes its yarn just before {1}:", move.plan(), move.beside())
        : Say.text("If {0} takes its yarn just after {1}:", move.plan(), move.beside());
  }

  private void show(List<PlanQueue.Change> found) {
    changes.getChildren().setAll(found.stream().map(AheadTrial::line).toList());
    if (found.isEmpty()) {
      changes.getChildren().add(Labels.quiet(Say.text("Nothing changes: every plan gets what it got.")));
    }
  }

  private static Node line(PlanQueue.Change change) {
    Label becomes = StandingMark.labelled(Standing.of(change.after().verdict()));
    becomes.setText(state(change.after()));
    HBox line = new HBox(new Label(change.plan() + ", " + change.after().yarn() + ":"), Labels.quiet(Say.text("was {0}, becomes", state(change.before()))), becomes);
    line.getStyleClass().add("ahead-change");
    return line;
  }

  private static String state(QueuedPlan.Claim claim) {
    String standing = Standing.of(claim.verdict()).word();
    return claim.lack().isZero() ? standing : Say.text("{0}, lacks {1}", standing, Wording.metres(claim.lack()));
  }
}
