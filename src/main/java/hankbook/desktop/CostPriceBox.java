package hankbook.desktop;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How a price is made of the cost, and the price. */
final class CostPriceBox extends VBox {
  CostPriceBox(CostModel cost) {
    getStyleClass().add("cost-list");
    FieldBox part = FieldRow.field("", "40 %", "cost-part", 110, cost.part()).withoutMessage();
    part.called(cost.wayProperty().map(PriceWay::part));
    Label price = new Label();
    price.setId("cost-price");
    price.setWrapText(true);
    price.getStyleClass().add("cost-price");
    price.textProperty().bind(cost.priceProperty());
    HBox.setHgrow(price, Priority.ALWAYS);
    VBox lowered = new VBox(Labels.quiet(" "), price);
    lowered.getStyleClass().add("field-box");
    HBox.setHgrow(lowered, Priority.ALWAYS);
    HBox line = new HBox(choice(cost), part, lowered);
    line.getStyleClass().add("cost-line");
    Label fault = Labels.fault(cost.part().messageProperty());
    fault.setId("cost-part-fault");
    Label words = Labels.quiet("A margin is a part of the price, a markup a part of the cost: 40 of 100 is a margin of 40 %, and 40 on 60, which is a markup of 66.67 %.");
    Label tax = Labels.quiet("Whether tax comes on top of the price or is in it follows local rules; ask someone who is licensed to say.");
    tax.setId("cost-tax");
    getChildren().addAll(line, fault, words, tax);
  }

  private static VBox choice(CostModel cost) {
    ToggleGroup group = new ToggleGroup();
    HBox choices = new HBox();
    choices.getStyleClass().add("way-choices");
    for (PriceWay way : PriceWay.values()) {
      ToggleButton choice = new ToggleButton(way.words());
      choice.setId("cost-" + way.words().toLowerCase(Locale.ROOT));
      choice.getStyleClass().add("way-choice");
      choice.setMinWidth(USE_PREF_SIZE);
      choice.setToggleGroup(group);
      choice.setOnAction(_ -> {
        choice.setSelected(true);
        cost.wayProperty().set(way);
      });
      cost.wayProperty().subscribe(now -> choice.setSelected(now == way));
      choices.getChildren().add(choice);
    }
    VBox lowered = new VBox(Labels.quiet("Price by"), choices);
    lowered.getStyleClass().add("field-box");
    return lowered;
  }
}
