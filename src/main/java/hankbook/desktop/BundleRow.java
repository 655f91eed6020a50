package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.studio.ToFinish;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** One bundle of thrums, or of yarn in a sample: of which yarn, and how much. */
final class BundleRow extends HBox {
  private final AfterEditor editor;
  private final ActualsPart part;
  private final int row;
  private final FoundBox amount;

  /** @param row counted from 1 */
  BundleRow(AfterEditor editor, ToFinish ground, ActualsPart part, int row) {
    this.editor = editor;
    this.part = part;
    this.row = row;
    String sort = part == ActualsPart.THRUMS ? Say.text("Thrums") : Say.text("Samples");
    amount = new FoundBox(editor, part, row, FoundBox.AMOUNT, Say.text("How much"), Say.text("{0} {1}, how much", sort, row), "38 g or 12 m", 130);
    getStyleClass().add("found-bundle");
    getChildren().addAll(yarn(ground, sort), amount);
    if (editor.draftProperty().get().rows(part).size() > 1) {
      getChildren().add(out());
    }
  }

  private VBox yarn(ToFinish ground, String sort) {
    List<YarnColour> yarns = new ArrayList<>(ground.skeins().stream().filter(ToFinish.Taken::isDrawn).map(taken -> taken.drawn().yarn()).distinct().toList());
    said().filter(yarn -> !yarns.contains(yarn)).ifPresent(yarns::add);
    ComboBox<String> choice = new ComboBox<>();
    String all = Say.text("all warp yarns together");
    choice.getItems().add(all);
    yarns.forEach(yarn -> choice.getItems().add(yarn.toString()));
    choice.setValue(said().map(YarnColour::toString).orElse(all));
    choice.setId(part.key() + "[" + row + "].yarn");
    choice.setAccessibleText(Say.text("{0} {1}, of which yarn", sort, row));
    choice.setPrefWidth(230);
    choice.valueProperty().subscribe(chosen -> choose(yarns.stream().filter(yarn -> yarn.toString().equals(chosen)).findFirst()));
    Label caption = new Label(Say.text("Of"));
    caption.getStyleClass().add("field-name");
    caption.setLabelFor(choice);
    VBox box = new VBox(caption, choice);
    box.getStyleClass().add("field-box");
    return box;
  }

  private Optional<YarnColour> said() {
    DraftRow said = editor.draftProperty().get().rows(part).get(row - 1);
    boolean named = !said.text("yarn").isBlank() && !said.text("colour").isBlank();
    return named ? Optional.of(new YarnColour(said.text("yarn"), said.text("colour"))) : Optional.empty();
  }

  private void choose(Optional<YarnColour> yarn) {
    ActualsDraft draft = editor.draftProperty().get();
    if (row <= draft.rows(part).size()) {
      ActualsDraft named = draft.with(part, row, "yarn", yarn.map(YarnColour::yarn).orElse("")).with(part, row, "colour", yarn.map(YarnColour::colour).orElse(""));
      if (!named.equals(draft)) {
        editor.enter(named);
        editor.keep();
      }
    }
  }

  private Button out() {
    Button out = new Button(Say.text("Take out"));
    out.setId("take-out-" + part.key() + "-" + row);
    out.setAccessibleText(part == ActualsPart.THRUMS ? Say.text("Take out thrums {0}", row) : Say.text("Take out samples {0}", row));
    out.getStyleClass().addAll("small", "flat");
    out.setMinWidth(USE_PREF_SIZE);
    out.setOnAction(_ -> {
      editor.enter(FoundRows.without(editor.draftProperty().get(), part, row));
      editor.keep();
    });
    return out;
  }

  /** Shows what the draft has. */
  void show(ActualsDraft draft) {
    amount.show(draft);
  }
}
