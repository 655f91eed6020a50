package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;

/** What was paid or taken off for all lines of a purchase, and by what it is shared over them. */
final class ChargeBox extends VBox {
  private static final double WIDTH = 128;

  /**
   * @param several whether there are lines to share it over
   * @param enter is run by the Enter key
   */
  ChargeBox(String name, String key, String id, PurchaseFields fields, ObservableValue<Boolean> several, Runnable enter) {
    FieldBox amount = new FieldBox(name, "0", fields.field(key), fields.message(key)).named(id).quantity();
    amount.field().setOnAction(_ -> enter.run());
    ComboBox<String> basis = new ComboBox<>();
    String byValue = Say.text("by value");
    String byMass = Say.text("by mass");
    basis.getItems().setAll(byValue, byMass);
    basis.setId(id + "-by");
    basis.setAccessibleText(Say.text("{0} shared", name));
    basis.setMaxWidth(Double.MAX_VALUE);
    StringProperty by = fields.field(PurchaseTyped.by(key));
    by.subscribe(text -> basis.setValue(text.equals("mass") ? byMass : byValue));
    basis.setOnAction(_ -> by.set(byMass.equals(basis.getValue()) ? "mass" : by.get().isEmpty() ? "" : "value"));
    Labels.showOnly(basis, several);
    getStyleClass().add("field-box");
    setPrefWidth(WIDTH);
    getChildren().addAll(amount, basis);
  }
}
