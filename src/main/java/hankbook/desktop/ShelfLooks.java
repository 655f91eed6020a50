package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.studio.shelf.GroupOrder;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;

/** Chooses how the shelf is looked at and in which order; the choices are remembered. */
final class ShelfLooks extends FlowPane {
  private static final String LOOK = "shelf-look";
  private static final String ORDER = "shelf-order";
  private static final String COLOUR = "shelf-colour";

  private final ShelfModel model;
  private final ShelfGroups groups;
  private final ObjectProperty<ShelfLook> look = new SimpleObjectProperty<>(ShelfLook.GROUPS);
  private final ToggleGroup toggles = new ToggleGroup();

  /** @param picking lets the user pick a colour */
  ShelfLooks(ShelfModel model, Remembered remembered, Runnable picking) {
    this.model = model;
    groups = model.groups();
    getStyleClass().add("shelf-looks");
    HBox choices = new HBox();
    for (ShelfLook choice : ShelfLook.values()) {
      choices.getChildren().add(toggle(choice));
    }
    Node order = order();
    Labels.showOnly(order, look.map(it -> it != ShelfLook.SKEINS));
    Node near = near(picking);
    Labels.showOnly(near, look.flatMap(it -> groups.orderProperty().map(chosen -> it != ShelfLook.SKEINS && chosen == GroupOrder.NEARNESS)));
    getChildren().addAll(choices, order, near);
    remembered.get(LOOK, ShelfLook.class).ifPresent(look::set);
    remembered.get(COLOUR, String.class).filter(hex -> hex.matches("#[0-9a-f]{6}")).ifPresent(groups.pickedProperty()::set);
    remembered.get(ORDER, GroupOrder.class).ifPresent(groups.orderProperty()::set);
    look.subscribe((_, now) -> remembered.put(LOOK, now));
    groups.orderProperty().subscribe((_, now) -> remembered.put(ORDER, now));
    groups.pickedProperty().subscribe((_, now) -> remembered.put(COLOUR, now));
  }

  /** How the shelf is looked at. */
  ObjectProperty<ShelfLook> lookProperty() {
    return look;
  }

  private ToggleButton toggle(ShelfLook choice) {
    ToggleButton toggle = new ToggleButton(choice.words());
    toggle.setId("shelf-" + choice.key());
    toggle.getStyleClass().add(choice == ShelfLook.GROUPS ? Styles.LEFT_PILL : choice == ShelfLook.WALL ? Styles.RIGHT_PILL : Styles.CENTER_PILL);
    toggle.setToggleGroup(toggles);
    toggle.setTooltip(new Tooltip(choice.about()));
    toggle.setOnAction(_ -> {
      look.set(choice);
      toggle.setSelected(true);
    });
    look.subscribe(now -> toggle.setSelected(now == choice));
    return toggle;
  }

  private Node order() {
    ComboBox<GroupOrder> orders = new ComboBox<>();
    orders.setId("shelf-order");
    orders.getItems().setAll(GroupOrder.values());
    orders.setConverter(new InWords());
    orders.valueProperty().bindBidirectional(groups.orderProperty());
    orders.setAccessibleText(Say.text("In order of"));
    Label label = Labels.quiet(Say.text("In order of"));
    label.setWrapText(false);
    label.setLabelFor(orders);
    return beside(label, orders);
  }

  private Node near(Runnable picking) {
    Swatch swatch = new Swatch(26, 22);
    groups.pickedProperty().subscribe(hex -> swatch.show(hex, hex));
    Label hex = Labels.quiet(groups.pickedProperty().map(picked -> picked.isEmpty() ? Say.text("no colour picked yet") : picked));
    hex.setId("shelf-picked");
    hex.setWrapText(false);
    Button pick = new Button(Say.text("Pick a colour…"));
    pick.setId("shelf-pick");
    pick.setOnAction(_ -> picking.run());
    Button same = new Button(Say.text("As the chosen skein"));
    same.setId("shelf-pick-chosen");
    same.setOnAction(_ -> chosenHex().ifPresent(picked()));
    same.disableProperty().bind(model.chosenProperty().map(chosen -> chosen.filter(row -> !row.skein().hex().isEmpty()).isEmpty()));
    return beside(swatch, hex, pick, same);
  }

  private Consumer<String> picked() {
    return groups.pickedProperty()::set;
  }

  private Optional<String> chosenHex() {
    return model.chosenProperty().get().map(row -> row.skein().hex()).filter(hex -> !hex.isEmpty());
  }

  private static HBox beside(Node... nodes) {
    HBox line = new HBox(nodes);
    line.getStyleClass().add("beside");
    return line;
  }

  /** Orders in words. */
  private static final class InWords extends StringConverter<GroupOrder> {
    @Override
    public String toString(GroupOrder order) {
      return switch (order) {
        case NAME -> Say.text("name");
        case HELD -> Say.text("length");
        case HUE -> Say.text("hue");
        case FIBRE -> Say.text("fibre, then hue");
        case NEARNESS -> Say.text("nearness to a colour");
      };
    }

    @Override
    public GroupOrder fromString(String words) {
      throw new UnsupportedOperationException("orders are chosen, not typed");
    }
  }
}
