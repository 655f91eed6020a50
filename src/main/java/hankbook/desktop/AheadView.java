package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What lies ahead: all plans against all yarns, the order of their turns, and the yarn on order. */
public final class AheadView extends BorderPane {
  private static final Insets BESIDE = new Insets(0, 0, 0, 12);

  private final AheadModel model;
  private final AheadTable table;

  /** @param open opens a plan by its name */
  public AheadView(AheadModel model, OnOrderModel onOrder, OrderingModel ordering, Consumer<String> open) {
    this.model = model;
    this.table = new AheadTable(model, open);
    OrderingPage page = new OrderingPage(ordering, () -> setRight(null));
    BorderPane.setMargin(page, BESIDE);
    getStyleClass().add("screen");
    setTop(top());
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox centre = new VBox(table, turns(), new AheadTrial(model), new OnOrderPart(onOrder, () -> order(page)));
    centre.getStyleClass().add("ahead-centre");
    setCenter(centre);
  }

  /** Puts the keyboard into the table. */
  public void search() {
    table.requestFocus();
  }

  private void order(OrderingPage page) {
    setRight(page);
    page.begin();
  }

  private Node top() {
    Label summary = Labels.quiet(model.aheadProperty().map(Ahead::summary));
    summary.setId("ahead-summary");
    summary.setWrapText(false);
    CheckBox counting = new CheckBox(Say.text("Count yarn on order"));
    counting.setId("count-on-order");
    counting.selectedProperty().bindBidirectional(model.countingProperty());
    counting.setMinWidth(USE_PREF_SIZE);
    FieldBox until = new FieldBox(Say.text("Counted until"), Say.text("any day"), model.until().textProperty(), model.until().messageProperty()).named("count-until");
    until.getChildren().removeFirst();
    until.field().setPrefColumnCount(9);
    HBox day = new HBox(new Label(Say.text("until")), until);
    day.getStyleClass().add("beside");
    Labels.showOnly(day, model.countingProperty());
    Label reckoning = Labels.quiet(Say.text("reckoning…"));
    reckoning.setMinWidth(USE_PREF_SIZE);
    Labels.showOnly(reckoning, model.reckoningProperty());
    HBox top = new HBox(Labels.title(Say.text("Ahead")), summary, reckoning, Labels.gap(), counting, day);
    top.getStyleClass().add("screen-top");
    return top;
  }

  private Node turns() {
    Label words = Labels.quiet(model.turnWordsProperty());
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button keep = turn(Say.text("Keep this order"), "keep-order", model.keepAct(), model::keep);
    keep.getStyleClass().add("accent");
    Button leave = new Button(Say.text("Leave it"));
    leave.setId("leave-order");
    leave.setMinWidth(USE_PREF_SIZE);
    leave.setOnAction(_ -> model.leave());
    Labels.showOnly(keep, model.triedProperty().map(Optional::isPresent));
    Labels.showOnly(leave, model.triedProperty().map(Optional::isPresent));
    HBox turns = new HBox(turn(Say.text("Up"), "turn-up", model.upAct(), model::up), turn(Say.text("Down"), "turn-down", model.downAct(), model::down), words, keep, leave);
    turns.getStyleClass().add("reason-line");
    return turns;
  }

  /** Why it cannot be done stands once beside both. */
  private static Button turn(String name, String id, Act act, Runnable doing) {
    Button button = new Button(name);
    button.setId(id);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> doing.run());
    button.disableProperty().bind(act.possibleProperty().map(can -> !can));
    button.accessibleHelpProperty().bind(act.whyNotProperty());
    return button;
  }
}
