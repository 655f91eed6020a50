package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.allot.Warning;
import hankbook.measure.LengthUnit;
import hankbook.plan.Yardage;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The answer to the plan that is open: its figures, each yarn's cover, what to know, and which skeins to take. */
final class PlanAnswerView extends VBox {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private static final double ROOM_FOR_TWO = 600;
  private static final double GAP = 20;

  private final PlansModel model;
  private final RemedyList remedies;

  PlanAnswerView(PlansModel model) {
    this.model = model;
    this.remedies = new RemedyList(model.remedies());
    getStyleClass().add("plan-answer");
    setFillWidth(true);
    model.editor().answerProperty().subscribe(_ -> show());
    model.skeinsProperty().subscribe(_ -> show());
    model.editor().reckoningProperty().subscribe(reckoning -> pseudoClassStateChanged(STALE, reckoning));
  }

  private void show() {
    getChildren().clear();
    switch (model.editor().answerProperty().get()) {
      case PlanAnswer.Reckoning reckoning -> headline(reckoning.standing(), "Reckoning.");
      case PlanAnswer.Unfinished unfinished -> headline(unfinished.standing(), unfinished.words());
      case PlanAnswer.Reckoned reckoned -> show(reckoned);
    }
  }

  private void headline(Standing standing, String words) {
    Label word = StandingMark.labelled(standing);
    word.getStyleClass().add(Styles.TITLE_3);
    word.setId("plan-verdict");
    Label why = text(words, "plan-verdict-words");
    HBox.setHgrow(why, Priority.ALWAYS);
    HBox headline = new HBox(word, why);
    headline.getStyleClass().add("plan-headline");
    getChildren().add(headline);
  }

  private void show(PlanAnswer.Reckoned reckoned) {
    PlanCheck check = reckoned.check();
    YarnPalette palette = YarnPalette.of(model.skeinsProperty().get());
    headline(reckoned.standing(), PlanWords.verdict(reckoned.standing(), check));
    VBox warp = column();
    VBox yarn = column();
    section(warp, "Warp", text(figures(check.yardage()), "plan-warp-words"), new WarpFigure(check.yardage().warp()));
    section(warp, "In the reed", new OrderFigure(check.plan().warp(), check.yardage().width().ends(), palette));
    section(yarn, "Yarn", check.covers().stream().map(cover -> new CoverCard(cover, palette)).toArray(Node[]::new));
    yarn.getChildren().add(remedies);
    section(yarn, "What to know", check.warnings().stream().map(PlanAnswerView::warning).toArray(Node[]::new));
    FlowPane columns = new FlowPane(GAP, GAP, warp, yarn);
    List.of(warp, yarn).forEach(column -> column.prefWidthProperty().bind(columns.widthProperty().map(width -> columnWidth(width.doubleValue()))));
    getChildren().add(columns);
    section(this, "Skeins to take", check.shares().stream().map(PlanAnswerView::share).toArray(Node[]::new));
  }

  private static VBox column() {
    VBox column = new VBox();
    column.getStyleClass().add("plan-column");
    column.setMinWidth(0);
    return column;
  }

  /** Two columns where there is room for both, else one below the other. */
  private static double columnWidth(double room) {
    return room >= ROOM_FOR_TWO ? Math.floor((room - GAP) / 2) : room;
  }

  private static String figures(Yardage yardage) {
    return yardage.width().ends() + " ends, " + yardage.width().inReed().print(LengthUnit.CENTIMETRE, 1) + " in the reed, each "
        + PlanWords.fine(yardage.warp().total()) + " long";
  }

  private static void section(VBox column, String title, Node... nodes) {
    if (nodes.length == 0) {
      return;
    }
    Label heading = new Label(title);
    heading.getStyleClass().addAll(Styles.TEXT_BOLD, "plan-heading");
    VBox section = new VBox(heading);
    section.getStyleClass().add("plan-section");
    section.getChildren().addAll(nodes);
    column.getChildren().add(section);
  }

  private static Node warning(Warning warning) {
    return text("• " + warning.text(), "plan-warning");
  }

  private static Node share(Share share) {
    String ends = share.ends() > 0 ? Wording.count(share.ends(), "end", "ends") + ", " + Wording.metres(share.warp()) : "";
    String weft = share.weft().isPositive() ? Wording.metres(share.weft()) + " of weft" : "";
    Label code = new Label(share.code());
    code.getStyleClass().add(Styles.TEXT_BOLD);
    VBox row = new VBox(code, text(ends + (ends.isEmpty() || weft.isEmpty() ? "" : " and ") + weft, "share-words"), text(share.reason(), Styles.TEXT_MUTED));
    row.getStyleClass().add("share-row");
    return row;
  }

  private static Label text(String words, String styleClass) {
    Label label = new Label(words);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    return label;
  }
}
