package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.Fault;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** The fields of the form as they are built, and the messages of their groups: what is shown in them and said beside them. */
final class PlanFields {
  private static final List<String> WEAVES = List.of("plain", "2/2 twill", "1/3 twill", "3/1 twill", "5-end satin", "8-end satin");
  private static final List<String> SLEYS = List.of("1", "2", "1-2", "2-3", "3", "4");

  private final PlansModel model;
  private final Map<PlanField, PlanFieldBox> boxes = new HashMap<>();
  private final Map<String, Label> messages = new HashMap<>();

  PlanFields(PlansModel model) {
    this.model = model;
  }

  void clear() {
    boxes.clear();
    messages.clear();
  }

  Optional<PlanFieldBox> find(PlanField field) {
    return Optional.ofNullable(boxes.get(field));
  }

  PlanFieldBox box(PlanField field) {
    PlanFieldBox box =
        switch (field.key()) {
          case "yarn" -> chosen(field, () -> palette().yarns());
          case "colour" ->
              PlanFieldBox.chosen(field, PlanFieldRow.width(field), model.editor(), () -> palette().colours(yarnBeside(field)), colour -> swatch(yarnBeside(field), colour));
          case "loom" -> chosen(field, () -> model.gearProperty().get().looms().stream().map(Loom::name).toList());
          case "reed" -> chosen(field, () -> model.gearProperty().get().reeds().stream().map(Reed::name).toList());
          case "weave" -> chosen(field, () -> WEAVES);
          case "sley" -> chosen(field, () -> SLEYS);
          case "oneLot" -> chosen(field, () -> List.of("yes", "no"));
          case "succession" -> PlanFieldBox.written(field, "ends", model.editor());
          case "weftSuccession" -> PlanFieldBox.written(field, "picks", model.editor());
          default -> PlanFieldBox.typed(field, PlanFieldRow.width(field), model.editor());
        };
    boxes.put(field, box);
    return box;
  }

  private PlanFieldBox chosen(PlanField field, Supplier<List<String>> choices) {
    return PlanFieldBox.chosen(field, PlanFieldRow.width(field), model.editor(), choices, _ -> Optional.empty());
  }

  private Optional<Node> swatch(String yarn, String colour) {
    return yarn.isBlank() || colour.isBlank() ? Optional.empty() : Optional.of(palette().swatch(new YarnColour(yarn, colour)));
  }

  private YarnPalette palette() {
    return YarnPalette.of(model.skeinsProperty().get());
  }

  private String yarnBeside(PlanField colour) {
    return model.editor().draftProperty().get().text(new PlanField(colour.part(), colour.row(), "yarn"));
  }

  /** Where it is said what is wrong with a whole group. */
  Label message(String group) {
    Label message = new Label();
    message.getStyleClass().addAll(Styles.TEXT_SMALL, "plan-field-message", "plan-group-message");
    message.setWrapText(true);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    messages.put(group, message);
    return message;
  }

  void show(PlanDraft draft) {
    boxes.forEach((field, box) -> box.show(draft.text(field)));
  }

  /** Says what is wrong beside each field, and nothing where nothing is. */
  void tell(PlanAnswer answer) {
    Map<String, Fault> faults = new HashMap<>();
    if (answer instanceof PlanAnswer.Unfinished unfinished) {
      unfinished.faults().forEach(fault -> faults.put(fault.field(), fault));
    }
    boxes.forEach((field, box) -> box.tell(Optional.ofNullable(faults.get(field.toString()))));
    messages.forEach((group, message) -> {
      String words = Optional.ofNullable(faults.get(group)).map(PlanWords::beside).orElse("");
      message.setText(words);
      message.setVisible(!words.isEmpty());
    });
  }
}
