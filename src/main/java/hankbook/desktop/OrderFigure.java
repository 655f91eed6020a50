package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.plan.OrderEntry;
import hankbook.plan.Warp;
import hankbook.plan.WarpOrder;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The warp as it lies in the reed: its order in true colours and proportion, with the ends of each yarn below. */
final class OrderFigure extends VBox {
  OrderFigure(Warp warp, int ends, YarnPalette palette) {
    getStyleClass().add("plan-figure");
    List<OrderEntry> order = warp.order();
    List<Long> counted = WarpOrder.ends(warp, ends);
    Stripes cloth = new Stripes("order-stripes");
    Map<YarnColour, Long> byYarn = new LinkedHashMap<>();
    for (int i = 0; i < order.size(); i++) {
      Region group = new Region();
      palette.paint(group, order.get(i).yarn());
      cloth.add(counted.get(i), group);
      byYarn.merge(order.get(i).yarn(), counted.get(i), Long::sum);
    }
    FlowPane legend = new FlowPane();
    legend.getStyleClass().add("plan-legend");
    byYarn.forEach((yarn, count) -> legend.getChildren().add(entry(yarn, count, palette)));
    cloth.setAccessibleText("The warp's order: " + String.join(", ", byYarn.entrySet().stream().map(group -> group.getValue() + " ends of " + group.getKey()).toList()));
    Region threads = new Region();
    threads.getStyleClass().add("warp-threads");
    threads.setMouseTransparent(true);
    getChildren().addAll(new StackPane(cloth, threads), legend);
  }

  private static Label entry(YarnColour yarn, long ends, YarnPalette palette) {
    Label label = new Label(yarn + " " + Wording.count(ends, "end", "ends"), palette.swatch(yarn));
    label.getStyleClass().add(Styles.TEXT_SMALL);
    return label;
  }
}
