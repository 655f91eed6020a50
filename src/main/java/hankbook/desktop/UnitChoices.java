package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.desktop.units.ClothUnit;
import hankbook.desktop.units.SettUnit;
import hankbook.desktop.units.Units;
import hankbook.desktop.units.WeightUnit;
import hankbook.desktop.units.YarnNumbers;
import hankbook.desktop.units.YarnUnit;
import hankbook.measure.NumberingSystem;
import hankbook.yarn.FibreFamily;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Each unit chosen apart, and by which numbers yarns go; folded away, since few mix them. It stays unfolded while one choice after the other is made. */
final class UnitChoices extends TitledPane {
  private static final String KEY = "units apart";
  private static final double WIDTH = 190;

  private final YouModel model;
  private final List<Runnable> held = new ArrayList<>();
  private final GridPane grid = new GridPane();

  UnitChoices(YouModel model, Remembered remembered) {
    this.model = model;
    Units units = model.units();
    setId("units-apart");
    setText(Say.text("Each unit apart, and how yarns are numbered"));
    setAnimated(false);
    setExpanded(remembered.get(KEY, Boolean.class).orElse(false));
    expandedProperty().subscribe((_, expanded) -> remembered.put(KEY, expanded));
    grid.getStyleClass().add("settings-by-work");
    row(Say.text("Yarn"), "unit-yarn", List.of(YarnUnit.values()), units.yarn(), UnitWords::of, it -> now().withYarn(it));
    row(Say.text("Cloth and reed"), "unit-cloth", List.of(ClothUnit.values()), units.cloth(), UnitWords::of, it -> now().withCloth(it));
    row(Say.text("Weight"), "unit-weight", List.of(WeightUnit.values()), units.weight(), UnitWords::of, it -> now().withWeight(it));
    row(Say.text("Sett and picks"), "unit-sett", List.of(SettUnit.values()), units.sett(), UnitWords::of, it -> now().withSett(it));
    for (FibreFamily family : FibreFamily.values()) {
      row(UnitWords.of(family), "number-" + family.name().toLowerCase(Locale.ROOT), List.of(NumberingSystem.values()), units.numbers().of(family), UnitWords::of, it -> now().withNumbers(numbers().with(family, it)));
    }
    row(Say.text("Blends and other yarn"), "number-other", List.of(NumberingSystem.values()), units.numbers().other(), UnitWords::of, it -> now().withNumbers(numbers().withOther(it)));
    VBox all = new VBox(Labels.quiet(Say.text("A yarn's number stays as its label has it. A grist that was weighed or reckoned is said by these.")), grid);
    all.getStyleClass().add("settings-by-work-body");
    setContent(all);
  }

  /** Shows what holds, whatever was chosen. */
  void showHeld() {
    held.forEach(Runnable::run);
  }

  private Units now() {
    return model.units();
  }

  private YarnNumbers numbers() {
    return model.units().numbers();
  }

  private <T> void row(String name, String id, List<T> all, T chosen, Function<T, String> words, Function<T, Units> with) {
    Choice<T> choice = new Choice<>(name, id, all, words, it -> model.measure(with.apply(it)));
    held.add(() -> choice.show(chosen));
    choice.show(chosen);
    choice.setPrefWidth(WIDTH);
    Label label = new Label(name);
    label.setLabelFor(choice);
    int at = grid.getChildren().size() / 2;
    grid.add(label, at % 2 * 2, at / 2);
    grid.add(choice, at % 2 * 2 + 1, at / 2);
  }
}
