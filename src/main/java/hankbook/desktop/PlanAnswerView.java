package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.allot.CoverBecause;
import hankbook.allot.PlanCheck;
import hankbook.allot.Warning;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.desktop.why.WhyBelow;
import hankbook.plan.Band;
import hankbook.plan.Because;
import hankbook.plan.ClothPattern;
import hankbook.plan.WarpBecause;
import hankbook.plan.WidthBecause;
import hankbook.plan.Yardage;
import hankbook.studio.Shelf;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether the shelf covers the plan that is open: its warp, each yarn's cover, what to know, and which skeins to take. */
final class PlanAnswerView extends PlanPage {
  private static final double ROOM_FOR_TWO = 600;
  private static final double GAP = 20;

  private final RemedyList remedies;
  private final Opened opened = new Opened();

  PlanAnswerView(PlansModel model) {
    super("cover", Say.text("Cover"), model);
    this.remedies = new RemedyList(model.remedies(), model.fit());
    visibleProperty().subscribe(seen -> model.fit().fit().watch(seen));
  }

  @Override
  void fill(PlanAnswer.Reckoned reckoned) {
    PlanCheck check = reckoned.check();
    YarnPalette palette = palette();
    VBox warp = column();
    VBox yarn = column();
    section(warp, Say.text("Warp"), warp(check));
    section(warp, Say.text("In the reed"), reed(check, palette));
    section(yarn, Say.text("Yarn"), check.covers().stream().map(cover -> card(check, cover)).toArray(Node[]::new));
    yarn.getChildren().add(remedies);
    section(yarn, Say.text("What to know"), warnings(check, true));
    section(warp, Say.text("Loom and reed"), warnings(check, false));
    FlowPane columns = new FlowPane(GAP, GAP, warp, yarn);
    List.of(warp, yarn).forEach(column -> column.prefWidthProperty().bind(columns.widthProperty().map(width -> columnWidth(width.doubleValue()))));
    getChildren().add(columns);
    section(this, Say.text("Skeins to take"), new SharesByYarn(check, model().skeinsProperty().get(), palette, opened).groups());
  }

  private Node[] warp(PlanCheck check) {
    WhyBelow below = new WhyBelow("warp", opened, BecauseWords.ON_SCREEN);
    Yardage yardage = check.yardage();
    FlowPane figures = new FlowPane(
        figure(below, "ends", Say.text("ends"), Wording.number(BigFraction.of(yardage.width().ends()), 0), () -> WidthBecause.of(check.plan()).ends()),
        figure(below, "reed", Say.text("in the reed"), Wording.width(yardage.width().inReed()), () -> WidthBecause.of(check.plan()).inReed()),
        figure(below, "length", Say.text("warp length"), PlanWords.fine(yardage.warp().total()), () -> WarpBecause.of(check.plan()).total()));
    figures.getStyleClass().add("warp-figures");
    return new Node[] {figures, new WarpFigure(yardage.warp(), () -> WarpBecause.of(check.plan()), below), below};
  }

  private static Node figure(WhyBelow below, String id, String caption, String number, Supplier<Because> why) {
    ToggleButton figure = below.figure(id, caption, number, why);
    figure.getStyleClass().add("warp-total");
    return new FigureBox(caption, figure);
  }

  private Node card(PlanCheck check, Cover cover) {
    return new CoverCard(cover, palette(), () -> CoverBecause.of(cover, check.plan(), stock(check)), opened);
  }

  private List<Skein> stock(PlanCheck check) {
    return Shelf.freeFor(check.plan().name(), model().skeinsProperty().get());
  }

  private static Node reed(PlanCheck check, YarnPalette palette) {
    Band warp = ClothPattern.of(check.plan()).warp();
    return new OrderFigure(warp, palette, Say.text("The warp's order: {0}", BandWords.warp(check.plan(), warp)), ends -> Say.count(ends, "{0} end", "{0} ends"));
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

  private static Node[] warnings(PlanCheck check, boolean ofYarn) {
    return check.warnings().stream().filter(warning -> warning.yarn().isPresent() == ofYarn).map(PlanAnswerView::warning).toArray(Node[]::new);
  }

  private static Node warning(Warning warning) {
    return text("• " + Wording.phrase(warning.phrase()), "plan-warning");
  }
}
