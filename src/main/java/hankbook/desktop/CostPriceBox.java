package hankbook.desktop;

import hankbook.cost.Price;
import hankbook.desktop.say.Say;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** How a price is made of the cost, and the price. */
final class CostPriceBox extends VBox {
  private static final double PART = 110;

  CostPriceBox(CostModel cost) {
    getStyleClass().add("cost-list");
    FieldBox part = FieldRow.field("", "40 %", "cost-part", PART, cost.part()).withoutMessage();
    part.setMinWidth(PART);
    part.called(cost.wayProperty().map(PriceWay::part));
    Label price = new Label();
    price.setId("cost-price");
    price.setMinWidth(USE_PREF_SIZE);
    price.getStyleClass().add("cost-price");
    price.textProperty().bind(cost.priceProperty().map(found -> found.map(Price::all).map(Wording::money).orElse("")));
    VBox lowered = new VBox(Labels.quiet(" "), price);
    lowered.getStyleClass().add("field-box");
    HBox line = new HBox(choice(cost), part, lowered);
    line.getStyleClass().add("cost-line");
    Label fault = Labels.fault(cost.part().messageProperty());
    fault.setId("cost-part-fault");
    Label each = Labels.steady(cost.priceProperty().map(found -> found.map(Price::pieces).map(CostWords::each).orElse("")), 1);
    each.setId("cost-price-each");
    Label words = Labels.quiet(Say.text("A margin is a part of the price, a markup a part of the cost: 40 on 60 is a margin of 40 % and a markup of 66.67 %."));
    Label tax = Labels.quiet(Say.text("Whether tax comes on top of the price or is in it follows local rules; ask someone who is licensed to say."));
    tax.setId("cost-tax");
    getChildren().addAll(line, each, fault, words, tax);
  }

  private static VBox choice(CostModel cost) {
    ToggleGroup group = new ToggleGroup();
    HBox choices = new HBox();
    choices.getStyleClass().add("way-choices");
    for (PriceWay way : PriceWay.values()) {
      ToggleButton choice = new ToggleButton(way.words());
      choice.setId("cost-" + way.name().toLowerCase(Locale.ROOT));
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
    VBox lowered = new VBox(Labels.quiet(Say.text("Price by")), choices);
    lowered.getStyleClass().add("field-box");
    return lowered;
  }
}
