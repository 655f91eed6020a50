package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.plan.Band;
import hankbook.plan.ClothPattern;
import hankbook.plan.Plan;
import hankbook.plan.SectionSum;
import java.util.function.LongFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What the open plan looks like: the warp as it lies in the reed, the picks, and both woven plain, whole and closely. */
final class ClothPage extends PlanPage {
  private static final double GAP = 20;

  private ClothPlace place = new ClothPlace();

  ClothPage(PlansModel model) {
    super("cloth", Say.text("Cloth"), model);
  }

  @Override
  void fill(PlanAnswer.Reckoned reckoned) {
    place = place.again();
    Plan plan = reckoned.check().plan();
    ClothPattern cloth = ClothPattern.of(plan);
    String warp = BandWords.warp(plan, cloth.warp());
    section(this, Say.text("In the reed"), order(cloth.warp(), warp, ends -> Say.count(ends, "{0} end", "{0} ends")));
    cloth.weft().ifPresent(weft -> section(this, Say.text("Picks, from the first"), order(weft, BandWords.weft(plan, weft), picks -> Say.count(picks, "{0} pick", "{0} picks"))));
    section(this, Say.text("Woven plain"), woven(plan, cloth, warp));
    plan.warp().sections().ifPresent(units -> section(this, Say.text("Ends counted in units"), new SectionTable(SectionSum.of(units, plan.warp().sett(), plan.warp().selvedgeEnds())),
        new SectionTry(new SectionTrial(plan, model().editor()))));
  }

  private Node order(Band band, String words, LongFunction<String> counted) {
    Label said = text(words, "cloth-words");
    VBox both = new VBox(new OrderFigure(band, palette(), words, counted), said);
    both.getStyleClass().add("plan-figure");
    return both;
  }

  private Node woven(Plan plan, ClothPattern cloth, String warp) {
    ClothPatch patch = new ClothPatch(cloth, palette(), place);
    String words = cloth.weft().map(picks -> Say.text("The whole cloth in plain weave. Ends: {0} Picks: {1}", warp, BandWords.weft(plan, picks)))
        .orElseGet(() -> Say.text("The whole cloth in plain weave. Ends: {0}", warp));
    WholeCloth whole = new WholeCloth(cloth, palette(), place, words);
    VBox left = new VBox(whole);
    WholeCloth.squeezed(cloth).ifPresent(said -> left.getChildren().add(quiet(said)));
    Label where = quiet("");
    where.setId("cloth-place");
    place.endProperty().subscribe(_ -> where.setText(place.words()));
    place.pickProperty().subscribe(_ -> where.setText(place.words()));
    VBox right = new VBox(patch, where, quiet(Say.text("Click the whole cloth, or use the arrow keys, to look elsewhere.")));
    left.getStyleClass().add("plan-figure");
    right.getStyleClass().add("plan-figure");
    return new FlowPane(GAP, GAP, left, right);
  }

  private static Label quiet(String words) {
    Label label = text(words, Styles.TEXT_MUTED);
    label.getStyleClass().add(Styles.TEXT_SMALL);
    label.setMaxWidth(WholeCloth.WIDEST);
    return label;
  }
}
