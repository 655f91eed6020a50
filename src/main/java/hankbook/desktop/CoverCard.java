package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.Cover;
import hankbook.allot.CoverBecause;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.desktop.why.WhyBelow;
import hankbook.measure.Length;
import hankbook.plan.Because;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One yarn's need against what is free of it. */
final class CoverCard extends VBox {
  /**
   * The card.
   *
   * @param why what each of its figures is made of
   * @param opened what explains itself, kept from one answer to the next
   */
  CoverCard(Cover cover, YarnPalette palette, Supplier<CoverBecause> why, Opened opened) {
    getStyleClass().add("cover-card");
    Label yarn = new Label(cover.yarn().toString(), palette.swatch(cover.yarn()));
    yarn.getStyleClass().add(Styles.TEXT_BOLD);
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox head = new HBox(yarn, space, StandingMark.labelled(Standing.of(cover.verdict())));
    head.setAlignment(Pos.CENTER_LEFT);
    WhyBelow below = new WhyBelow(cover.yarn().toString(), opened, BecauseWords.ON_SCREEN);
    FlowPane figures = new FlowPane(
        figure(below, "need", Say.text("need"), Wording.yarn(cover.need()), () -> why.get().need()),
        figure(below, "free", Say.text("free"), Wording.yarn(cover.free()), () -> why.get().free()),
        figure(below, "margin", Say.text("margin"), signed(cover.margin()), () -> why.get().margin()),
        figure(below, "uncertainty", Say.text("how sure"), Wording.within(cover.uncertainty()), () -> why.get().uncertainty()));
    figures.getStyleClass().add("cover-figures");
    getChildren().addAll(head, bar(cover), figures, risk(cover, below, why), below);
  }

  /** How likely it is to run out; said by the margin alone where that is less than nothing. */
  private static Node risk(Cover cover, WhyBelow below, Supplier<CoverBecause> why) {
    ToggleButton risk = below.figure("risk", "", PlanWords.risk(cover), () -> why.get().risk());
    risk.getStyleClass().addAll(Styles.TEXT_SMALL, "cover-risk");
    risk.setWrapText(true);
    risk.setMinWidth(0);
    return risk;
  }

  private static String signed(Length margin) {
    return margin.isNegative() ? "−" + Wording.yarn(margin.negated()) : "+" + Wording.yarn(margin);
  }

  private static Node figure(WhyBelow below, String id, String caption, String number, Supplier<Because> why) {
    ToggleButton figure = below.figure(id, caption, number, why);
    figure.getStyleClass().add("cover-figure");
    return new FigureBox(caption, figure);
  }

  /** What is free and needed, then what is needed and lacks, or what is free and stays. */
  private static Node bar(Cover cover) {
    Stripes bar = new Stripes("cover-bar");
    Length served = Length.min(cover.need(), cover.free());
    bar.add(served.tenthsOfMillimetre(), stretch("cover-served"));
    bar.add(cover.need().minus(served).tenthsOfMillimetre(), stretch("cover-lacks"));
    bar.add(cover.free().minus(served).tenthsOfMillimetre(), stretch("cover-stays"));
    return bar;
  }

  private static Region stretch(String styleClass) {
    Region stretch = new Region();
    stretch.getStyleClass().add(styleClass);
    return stretch;
  }
}
