package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.measure.Length;
import hankbook.plan.WarpLength;
import hankbook.plan.WarpPart;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The length of a warp as a bar of what becomes of it, with the lengths below. */
final class WarpFigure extends VBox {
  WarpFigure(WarpLength warp) {
    getStyleClass().add("plan-figure");
    Stripes bar = new Stripes("warp-bar");
    FlowPane legend = new FlowPane();
    legend.getStyleClass().add("plan-legend");
    warp.parts().forEach((part, length) -> {
      if (!length.isZero()) {
        bar.add(length.tenthsOfMillimetre(), stretch(part));
        legend.getChildren().add(entry(part, length));
      }
    });
    bar.setAccessibleText("Of each end, " + Wording.metres(warp.total()) + ", becomes " + words(warp));
    getChildren().addAll(bar, legend);
  }

  private static Region stretch(WarpPart part) {
    Region stretch = new Region();
    stretch.getStyleClass().addAll("warp-part", "warp-" + part.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    return stretch;
  }

  private static Node entry(WarpPart part, Length length) {
    Region key = stretch(part);
    key.getStyleClass().add("warp-key");
    String words = length.isNegative() ? "lacks " + PlanWords.fine(length.negated()) : PlanWords.part(part) + " " + PlanWords.fine(length);
    Label label = new Label(words, key);
    label.getStyleClass().add(Styles.TEXT_SMALL);
    return label;
  }

  private static String words(WarpLength warp) {
    return String.join(", ", warp.parts().entrySet().stream().filter(part -> !part.getValue().isZero())
        .map(part -> PlanWords.part(part.getKey()) + " " + PlanWords.fine(part.getValue())).toList());
  }
}
