package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.studio.ToFinish;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What is left of one skein: by which way that is known, what was found, and what it comes to. */
final class LeftoverCard extends VBox {
  private static final double WIDTH = 82;

  private final AfterEditor editor;
  private final ToFinish.Taken taken;
  private final int row;
  private final String code;
  private final Map<LeftWay, ToggleButton> ways = new EnumMap<>(LeftWay.class);
  private final Map<LeftWay, List<FoundBox>> fields = new EnumMap<>(LeftWay.class);
  private final FlowPane shown = new FlowPane();
  private final Label reading = Labels.quiet("");

  /** @param row counted from 1 */
  LeftoverCard(AfterEditor editor, ToFinish.Taken taken, int row) {
    this.editor = editor;
    this.taken = taken;
    this.row = row;
    this.code = taken.drawn().code();
    getStyleClass().add("found-skein");
    fields.put(LeftWay.USED_UP, List.of());
    fields.put(LeftWay.LENGTH, List.of(box("left", Say.text("Left on it"), "120 m")));
    fields.put(LeftWay.WEIGHT, List.of(box("gross", Say.text("It weighs"), "92 g"), box("tare", LeftReading.isWound(taken.held().skein())
        ? Say.text("Its {0}", Say.known(taken.held().skein().form().toString()))
        : Say.text("Its tare"), "38 g"), box("regain", Say.text("Moisture"), Say.text("the usual"))));
    fields.put(LeftWay.TURNS, List.of(box("turns", Say.text("Turns"), "60"), box("reel", Say.text("Once round"), "2 m")));
    reading.setId("reading-" + code);
    shown.getStyleClass().add("plan-tried");
    HBox line = new HBox(buttons(), shown);
    line.getStyleClass().add("found-line");
    getChildren().addAll(head(), line, reading);
    show(editor.draftProperty().get());
  }

  private FoundBox box(String key, String caption, String example) {
    return new FoundBox(editor, ActualsPart.LEFTOVERS, row, key, caption, code + ", " + PlanWords.inside(caption), example, WIDTH).withoutMessage();
  }

  private Node head() {
    Swatch swatch = new Swatch(18, 18);
    swatch.show(taken.held().skein().hex(), taken.drawn().yarn().colour());
    Label name = new Label(code);
    name.getStyleClass().add("share-code");
    name.setMinWidth(USE_PREF_SIZE);
    Label yarn = new Label(taken.drawn().yarn().toString());
    yarn.setMinWidth(0);
    Label drawn = Labels.quiet(taken.isDrawn() ? Say.text("{0} drawn", Wording.yarn(taken.drawn().onLoom())) : Say.text("not drawn; {0} free", Wording.yarn(taken.drawn().free())));
    drawn.setWrapText(false);
    drawn.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(swatch, name, yarn, Labels.gap(), drawn);
    head.getStyleClass().add("beside");
    if (!taken.isDrawn()) {
      Button out = new Button(Say.text("Take out"));
      out.setId("take-out-" + code);
      out.getStyleClass().addAll("small", "flat");
      out.setMinWidth(USE_PREF_SIZE);
      out.setOnAction(_ -> {
        editor.enter(FoundRows.without(editor.draftProperty().get(), ActualsPart.LEFTOVERS, row));
        editor.keep();
      });
      head.getChildren().add(out);
    }
    return head;
  }

  private Node buttons() {
    ToggleGroup group = new ToggleGroup();
    FlowPane choices = new FlowPane();
    choices.getStyleClass().addAll("way-choices", "found-ways");
    List<Node> buttons = new ArrayList<>();
    for (LeftWay way : LeftWay.values()) {
      ToggleButton button = new ToggleButton(way.toString());
      button.setId("left-by-" + way.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + code);
      button.setAccessibleText(code + ": " + way);
      button.setToggleGroup(group);
      button.getStyleClass().add("way-choice");
      button.setOnAction(_ -> {
        button.setSelected(true);
        editor.choose(row, way);
      });
      ways.put(way, button);
      buttons.add(button);
    }
    choices.getChildren().setAll(buttons);
    return choices;
  }

  /** Shows what the draft has. */
  void show(ActualsDraft draft) {
    DraftRow said = draft.rows(ActualsPart.LEFTOVERS).get(row - 1);
    LeftWay way = editor.way(said);
    ways.forEach((each, button) -> button.setSelected(each == way));
    List<FoundBox> boxes = fields.getOrDefault(way, List.of());
    List<Node> wanted = boxes.stream().filter(box -> !box.field().getId().endsWith(".regain") || !said.text("regain").isEmpty()).map(Node.class::cast).toList();
    if (!shown.getChildren().equals(wanted)) {
      shown.getChildren().setAll(wanted);
    }
    boxes.forEach(box -> box.show(draft));
    String wrong = way.keys().stream().map(key -> FoundText.fault(ActualsPart.LEFTOVERS, key, said.text(key))).filter(words -> !words.isEmpty()).findFirst().orElse("");
    String words = LeftReading.of(taken, said).words();
    reading.setText(!wrong.isEmpty() ? wrong : words.isEmpty() ? Say.text("Still to be said.") : words);
    FoundBox.mark(reading, !wrong.isEmpty());
  }
}
