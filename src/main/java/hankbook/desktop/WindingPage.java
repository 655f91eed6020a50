package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.WindingWish;
import hankbook.desktop.say.Say;
import hankbook.plan.Bout;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What to have beside the warping board: how the weaver likes to wind, and below it the sheet in large rows. */
final class WindingPage extends PlanPage {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");
  private static final double FIELD = 138;

  private final WindingModel winding;
  private final VBox sheet = new VBox();
  private final Label copied = Labels.quiet("");
  private final FieldBox threads;

  WindingPage(PlansModel model) {
    super("winding", Say.text("Winding"), model);
    this.winding = model.winding();
    this.threads = FieldRow.field(Say.text("Threads together"), Say.text("the plan's"), "winding-threads", FIELD, winding.threads());
    CheckBox across = new CheckBox(Say.text("Across colours"));
    across.setId("winding-across");
    across.selectedProperty().bindBidirectional(winding.acrossProperty());
    across.setAccessibleHelp(Say.text("Hold the threads that come next in the order of the warp, of whatever yarns."));
    FieldRow fields = new FieldRow(
        threads, FieldRow.field(Say.text("Most ends per bout"), Integer.toString(Bout.USUAL), "winding-bout", FIELD, winding.bout()),
        FieldRow.field(Say.text("Counting thread every"), Integer.toString(WindingWish.USUAL_GROUP), "winding-group", FIELD, winding.group()), lowered(across));
    sheet.getStyleClass().add("winding-sheet");
    stands(fields, copyLine(), Labels.fault(winding.sheet().troubleProperty()), sheet);
    visibleProperty().subscribe(seen -> winding.sheet().watch(seen));
    winding.sheet().foundProperty().subscribe(this::show);
    winding.sheet().reckoningProperty().subscribe(reckoning -> sheet.pseudoClassStateChanged(STALE, reckoning));
  }

  /** In line with the fields, whose names stand above them. */
  private static VBox lowered(CheckBox box) {
    VBox lowered = new VBox(Labels.quiet(" "), box);
    lowered.getStyleClass().add("field-box");
    return lowered;
  }

  private HBox copyLine() {
    Button copy = new Button(Say.text("Copy as text"));
    copy.setId("winding-copy");
    copy.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    copy.disableProperty().bind(winding.sheet().foundProperty().map(Optional::isEmpty));
    copy.setOnAction(_ -> copy());
    copied.setId("winding-copied");
    HBox line = new HBox(copy, copied);
    line.getStyleClass().add("reason-line");
    return line;
  }

  private void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putString(winding.text());
    boolean taken = Clipboard.getSystemClipboard().setContent(content);
    copied.setText(taken ? Say.text("The sheet is on the clipboard.") : Say.text("The clipboard did not take it."));
  }

  private void show(Optional<WindingModel.Planned> found) {
    copied.setText("");
    sheet.getChildren().clear();
    found.ifPresent(now -> sheet.getChildren().add(new WindingRows(now, winding, model().skeinsProperty().get())));
  }

  /** The sheet has its own answer, which comes after the plan's. */
  @Override
  void fill(PlanAnswer.Reckoned reckoned) {
    threads.field().setPromptText(Integer.toString(reckoned.check().plan().threads()));
  }
}
