package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanPart;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The head of a column: what it is, and of a variant what is said otherwise in it. */
final class BesideHead extends VBox {
  private final BesideModel model;
  private final BesideColumn column;
  private final String id;

  /**
   * @param place of the column, from 0
   * @param yarns to choose from
   */
  BesideHead(BesideModel model, BesideColumn column, int place, Supplier<List<ShelfSkein>> yarns) {
    this.model = model;
    this.column = column;
    this.id = "beside-" + (column.isVariant() ? column.letter().toLowerCase(Locale.ROOT) : place);
    getStyleClass().add("beside-head");
    Label name = new Label(column.name());
    name.setId(id);
    name.setWrapText(true);
    name.getStyleClass().add(Styles.TEXT_BOLD);
    HBox top = new HBox(6, name, Labels.gap());
    if (place > 0) {
      top.getChildren().add(away());
    }
    getChildren().add(top);
    if (column.isVariant()) {
      vary(() -> yarns.get().stream().map(held -> held.skein().yarn()).distinct().sorted().toList());
    }
  }

  private Button away() {
    Button away = new Button("×");
    away.setId(id + "-away");
    away.getStyleClass().addAll(Styles.FLAT, Styles.SMALL, "plan-remove");
    away.setAccessibleText(Say.text("Take {0} away", column.name()));
    away.setMinWidth(USE_PREF_SIZE);
    away.setOnAction(_ -> model.remove(column));
    return away;
  }

  private void vary(Supplier<List<YarnColour>> shelf) {
    getChildren().add(Labels.quiet(Say.text("{0}, but with:", column.plan())));
    FieldBox sett = field(Say.text("Sett"), column.said(PlanPart.WARP, "sett"), "-sett", column.sett());
    FieldBox width = field(Say.text("Width"), column.said(PlanPart.PIECES, "width"), "-width", column.width());
    FieldBox sampling = field(Say.text("Sampling"), column.said(PlanPart.ALLOWANCES, "sampling"), "-sampling", column.sampling());
    List<FieldBox> counts = new ArrayList<>();
    column.counts().forEach((kind, count) -> counts.add(count(kind, count)));
    getChildren().add(FieldBox.pair(sett, width));
    getChildren().add(counts.size() == 1 ? FieldBox.pair(counts.getFirst(), sampling) : sampling);
    getChildren().addAll(counts.size() == 1 ? List.of() : counts);
    getChildren().addAll(
        chosen(Say.text("In the place of"), "-from", column.fromProperty(), column::yarns), chosen(Say.text("take"), "-to", column.toProperty(), shelf));
    Button make = new Button(Say.text("Make it a plan"));
    make.setId(id + "-make");
    make.getStyleClass().add(Styles.SMALL);
    make.setOnAction(_ -> model.makePlan(column));
    getChildren().add(make);
  }

  private FieldBox count(String kind, TypedValue<Integer> count) {
    int space = kind.indexOf(' ');
    String name = column.counts().size() == 1 ? Say.text("Pieces") : Say.text("Pieces, {0}", kind.substring(space + 1));
    return field(name, column.countSaid(kind), "-count-" + kind.substring(0, space), count);
  }

  private FieldBox field(String name, String said, String key, TypedValue<?> value) {
    FieldBox box = new FieldBox(name, said, value.textProperty(), value.messageProperty()).named(id + key).quantityInstead();
    box.field().setAccessibleText(Say.text("{0}: {1}", column.name(), name));
    return box;
  }

  private VBox chosen(String name, String key, ObjectProperty<Optional<YarnColour>> value, Supplier<List<YarnColour>> choices) {
    ComboBox<Optional<YarnColour>> box = new ComboBox<>();
    box.setId(id + key);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setAccessibleText(Say.text("{0}: {1}", column.name(), name));
    box.setConverter(new StringConverter<>() {
      @Override
      public String toString(Optional<YarnColour> yarn) {
        return yarn == null ? "" : yarn.map(YarnColour::toString).orElse(Say.text("no other"));
      }

      @Override
      public Optional<YarnColour> fromString(String text) {
        return Optional.empty();
      }
    });
    box.setValue(value.get());
    box.setOnShowing(_ -> {
      Optional<YarnColour> now = value.get();
      box.getItems().setAll(choices.get().stream().map(Optional::of).toList());
      box.getItems().addFirst(Optional.empty());
      box.setValue(now);
    });
    box.valueProperty().subscribe(chosen -> value.set(chosen == null ? value.get() : chosen));
    Label label = new Label(name);
    label.getStyleClass().add("field-name");
    label.setLabelFor(box);
    VBox both = new VBox(label, box);
    both.getStyleClass().add("field-box");
    return both;
  }
}
