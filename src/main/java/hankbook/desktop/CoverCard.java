package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.Cover;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One yarn's need against what is free of it. */
final class CoverCard extends VBox {
  /**
   * The card.
   *
   * @param opened the yarns of which it is shown how sure they are, kept from one answer to the next
   */
  CoverCard(Cover cover, YarnPalette palette, Set<YarnColour> opened) {
    getStyleClass().add("cover-card");
    Label yarn = new Label(cover.yarn().toString(), palette.swatch(cover.yarn()));
    yarn.getStyleClass().add(Styles.TEXT_BOLD);
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox head = new HBox(yarn, space, StandingMark.labelled(Standing.of(cover.verdict())));
    head.setAlignment(Pos.CENTER_LEFT);
    HBox figures = new HBox(
        figure("need", Wording.metres(cover.need())),
        figure("free", Wording.metres(cover.free())),
        figure("margin ± uncertainty", signed(cover.margin()) + " ± " + Wording.metres(cover.uncertainty())));
    figures.getStyleClass().add("cover-figures");
    Label risk = new Label(PlanWords.risk(cover));
    risk.getStyleClass().addAll(Styles.TEXT_SMALL, "cover-risk");
    risk.setWrapText(true);
    getChildren().addAll(head, bar(cover), figures, risk);
    if (!cover.doubt().parts().isEmpty()) {
      getChildren().add(howSure(cover, opened));
    }
  }

  private static Node howSure(Cover cover, Set<YarnColour> opened) {
    VBox tree = new VBox();
    ToggleButton how = new ToggleButton("How sure");
    how.setAccessibleText("How sure the metres of " + cover.yarn() + " are");
    how.setId("how-sure-" + cover.yarn());
    how.getStyleClass().addAll(Styles.SMALL, Styles.FLAT, "how-sure");
    how.setSelected(opened.contains(cover.yarn()));
    how.selectedProperty().subscribe(shown -> {
      if (shown) {
        opened.add(cover.yarn());
        tree.getChildren().setAll(new DoubtTree(cover.doubt()));
      } else {
        opened.remove(cover.yarn());
        tree.getChildren().clear();
      }
    });
    return new VBox(how, tree);
  }

  private static String signed(Length margin) {
    return margin.isNegative() ? "−" + Wording.metres(margin.negated()) : "+" + Wording.metres(margin);
  }

  private static Node figure(String caption, String figure) {
    Label name = new Label(caption);
    name.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    Label value = new Label(figure);
    value.getStyleClass().add("cover-figure");
    value.setMinWidth(USE_PREF_SIZE);
    VBox box = new VBox(name, value);
    HBox.setHgrow(box, Priority.ALWAYS);
    return box;
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
