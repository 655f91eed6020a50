package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.WhyBelow;
import hankbook.measure.Length;
import hankbook.plan.WarpBecause;
import hankbook.plan.WarpLength;
import hankbook.plan.WarpPart;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The length of a warp as a bar of what becomes of it, with the lengths below. */
final class WarpFigure extends VBox {
  /**
   * The figure.
   *
   * @param why what each of the lengths is made of
   * @param below where that is shown
   */
  WarpFigure(WarpLength warp, Supplier<WarpBecause> why, WhyBelow below) {
    getStyleClass().add("plan-figure");
    Stripes bar = new Stripes("warp-bar");
    FlowPane legend = new FlowPane();
    legend.getStyleClass().add("plan-legend");
    warp.parts().forEach((part, length) -> {
      if (!length.isZero()) {
        bar.add(length.tenthsOfMillimetre(), stretch(part));
        legend.getChildren().add(entry(part, length, why, below));
      }
    });
    bar.setAccessibleText(Say.text("Of each end, {0}, becomes {1}", PlanWords.fine(warp.total()), words(warp)));
    getChildren().addAll(bar, legend);
  }

  private static Region stretch(WarpPart part) {
    Region stretch = new Region();
    stretch.getStyleClass().addAll("warp-part", "warp-" + part.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    return stretch;
  }

  private static Node entry(WarpPart part, Length length, Supplier<WarpBecause> why, WhyBelow below) {
    Region key = stretch(part);
    key.getStyleClass().add("warp-key");
    Label name = new Label(length.isNegative() ? Say.text("lacks") : PlanWords.part(part), key);
    name.getStyleClass().add(Styles.TEXT_SMALL);
    String number = PlanWords.fine(length.isNegative() ? length.negated() : length);
    ToggleButton figure = below.figure(part.key(), name.getText(), number, () -> Objects.requireNonNull(why.get().parts().get(part)));
    figure.getStyleClass().add(Styles.TEXT_SMALL);
    HBox entry = new HBox(name, figure);
    entry.getStyleClass().add("warp-entry");
    return entry;
  }

  private static String words(WarpLength warp) {
    return String.join(", ", warp.parts().entrySet().stream().filter(part -> !part.getValue().isZero())
        .map(part -> PlanWords.part(part.getKey()) + " " + PlanWords.fine(part.getValue())).toList());
  }
}
