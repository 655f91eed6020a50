package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.plan.Band;
import hankbook.yarn.YarnColour;
import java.util.function.LongFunction;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The threads of a band as they lie, in true colours and proportion, with how many there are of each yarn below. */
final class OrderFigure extends VBox {
  /**
   * @param words the band in words
   * @param counted so many threads of it in words
   */
  OrderFigure(Band band, YarnPalette palette, String words, LongFunction<String> counted) {
    getStyleClass().add("plan-figure");
    FlowPane legend = new FlowPane();
    legend.getStyleClass().add("plan-legend");
    BandWords.counts(band).forEach((yarn, count) -> legend.getChildren().add(entry(yarn, counted.apply(count), palette)));
    getChildren().addAll(new BandStrip(band, palette, words), legend);
  }

  private static Label entry(YarnColour yarn, String count, YarnPalette palette) {
    Label label = new Label(yarn + " " + count, palette.swatch(yarn));
    label.getStyleClass().add(Styles.TEXT_SMALL);
    return label;
  }
}
