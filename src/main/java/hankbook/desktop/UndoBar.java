package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.ledger.ChainedEntry;
import hankbook.studio.Undoing;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Asks above the status line whether the last thing is to be taken back, and shows what that would do; first of all, whether something was said later that stays. */
final class UndoBar extends VBox {
  private final UndoModel model;
  private final Button take = new Button(Say.text("Take it back"));
  private final Button leave = new Button();
  private @Nullable Node before;

  UndoBar(UndoModel model) {
    this.model = model;
    ObservableValue<Optional<Undoing>> offered = model.offeredProperty();
    setId("undo-bar");
    getStyleClass().add("undo-bar");
    Label asked = Labels.heading("");
    asked.setId("undo-words");
    asked.textProperty().bind(offered.map(now -> now.map(UndoBar::asked).orElse("")));
    Label why = Labels.fault(model.act().whyNotProperty());
    why.setId("undo-why");
    Label since = Labels.quiet(offered.map(now -> now.flatMap(Undoing::saidSince).map(DeedWords::since).orElse("")));
    since.setId("undo-since");
    getChildren().addAll(since, asked, why, new ChangeList(offered), acts());
    Labels.showOnly(this, offered.map(Optional::isPresent));
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    offered.subscribe(now -> turnTo(now.isPresent()));
  }

  private HBox acts() {
    take.setId("undo-take");
    take.getStyleClass().add("accent");
    take.disableProperty().bind(model.act().possibleProperty().map(can -> !can));
    take.setOnAction(_ -> model.confirm());
    leave.setId("undo-leave");
    leave.setText(Say.text("Leave it"));
    leave.setOnAction(_ -> model.leave());
    HBox acts = new HBox(take, leave, Labels.quiet(model.offeredProperty().map(now -> keys(isSaidSince(now)))));
    acts.getStyleClass().add("reason-line");
    return acts;
  }

  private static boolean isSaidSince(Optional<Undoing> offered) {
    return offered.flatMap(Undoing::saidSince).isPresent();
  }

  private static String keys(boolean saidSince) {
    return saidSince ? Say.text("{0} takes it back, Escape leaves it.", Chord.UNDO.words()) : Say.text("Enter or {0} takes it back, Escape leaves it.", Chord.UNDO.words());
  }

  private static String asked(Undoing undoing) {
    ChainedEntry main = undoing.main();
    if (DeedWords.isTakenBack(main.entry())) {
      return Say.text("Bring back what entry {0} took back on {1}?", main.number(), main.entry().date());
    }
    return undoing.entries().size() > 1
        ? Say.text("Take back: {0}, and {1} (entries {2} and {3})?", DeedWords.of(main.entry()), DeedWords.of(undoing.entries().getLast().entry()),
            undoing.entries().getLast().number(), main.number())
        : Say.text("Take back: {0} (entry {1}, {2})?", DeedWords.of(main.entry()), main.number(), main.entry().date());
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      model.leave();
    } else if (event.getCode() == KeyCode.ENTER && !leave.isFocused()) {
      event.consume();
      model.confirm();
    }
  }

  private void turnTo(boolean shown) {
    if (getScene() == null) {
      return;
    }
    if (shown) {
      before = getScene().getFocusOwner();
      (take.isDisabled() || isSaidSince(model.offeredProperty().get()) ? leave : take).requestFocus();
    } else if (before != null) {
      before.requestFocus();
    }
  }
}
