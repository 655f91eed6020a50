package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.allot.Warning;
import hankbook.measure.LengthUnit;
import hankbook.plan.Band;
import hankbook.plan.ClothPattern;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Whether the shelf covers the plan that is open: its warp, each yarn's cover, what to know, and which skeins to take. */
final class PlanAnswerView extends PlanPage {
  private static final double ROOM_FOR_TWO = 600;
  private static final double GAP = 20;

  private final RemedyList remedies;
  private final Set<YarnColour> howSure = new HashSet<>();

  PlanAnswerView(PlansModel model) {
    super("Cover", model);
    this.remedies = new RemedyList(model.remedies(), model.fit());
    visibleProperty().subscribe(seen -> model.fit().fit().watch(seen));
  }

  @Override
  void fill(PlanAnswer.Reckoned reckoned) {
    PlanCheck check = reckoned.check();
    YarnPalette palette = palette();
    VBox warp = column();
    VBox yarn = column();
    section(warp, "Warp", text(figures(check.yardage()), "plan-warp-words"), new WarpFigure(check.yardage().warp()));
    section(warp, "In the reed", reed(check, palette));
    section(yarn, "Yarn", check.covers().stream().map(cover -> new CoverCard(cover, palette, howSure)).toArray(Node[]::new));
    yarn.getChildren().add(remedies);
    section(yarn, "What to know", warnings(check, true));
    section(warp, "Loom and reed", warnings(check, false));
    FlowPane columns = new FlowPane(GAP, GAP, warp, yarn);
    List.of(warp, yarn).forEach(column -> column.prefWidthProperty().bind(columns.widthProperty().map(width -> columnWidth(width.doubleValue()))));
    getChildren().add(columns);
    section(this, "Skeins to take", SharesByYarn.of(check.shares(), model().skeinsProperty().get(), palette));
  }

  private static Node reed(PlanCheck check, YarnPalette palette) {
    Band warp = ClothPattern.of(check.plan()).warp();
    return new OrderFigure(warp, palette, "The warp's order: " + BandWords.warp(check.plan(), warp), "end", "ends");
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

  private static Node[] warnings(PlanCheck check, boolean ofYarn) {
    return check.warnings().stream().filter(warning -> warning.yarn().isPresent() == ofYarn).map(PlanAnswerView::warning).toArray(Node[]::new);
  }

  private static Node warning(Warning warning) {
    return text("• " + warning.text(), "plan-warning");
  }
}
