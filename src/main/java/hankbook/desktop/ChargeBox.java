package hankbook.desktop;

import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;

/** What was paid or taken off for all lines of a purchase, and by what it is shared over them. */
final class ChargeBox extends VBox {
  private static final double WIDTH = 128;
  private static final String BY_VALUE = "by value";
  private static final String BY_MASS = "by mass";

  /**
   * @param several whether there are lines to share it over
   * @param enter is run by the Enter key
   */
  ChargeBox(String name, String key, String id, PurchaseFields fields, ObservableValue<Boolean> several, Runnable enter) {
    FieldBox amount = new FieldBox(name, "0", fields.field(key), fields.message(key)).named(id).quantity();
    amount.field().setOnAction(_ -> enter.run());
    ComboBox<String> basis = new ComboBox<>();
    basis.getItems().setAll(BY_VALUE, BY_MASS);
    basis.setId(id + "-by");
    basis.setAccessibleText(name + " shared");
    basis.setMaxWidth(Double.MAX_VALUE);
    StringProperty by = fields.field(PurchaseTyped.by(key));
    by.subscribe(text -> basis.setValue(text.equals("mass") ? BY_MASS : BY_VALUE));
    basis.setOnAction(_ -> by.set(BY_MASS.equals(basis.getValue()) ? "mass" : by.get().isEmpty() ? "" : "value"));
    Labels.showOnly(basis, several);
    getStyleClass().add("field-box");
    setPrefWidth(WIDTH);
    getChildren().addAll(amount, basis);
  }
}
