package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.studio.ToFinish;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The bundles of thrums and of yarn that went into samples. */
final class FoundBundles extends VBox {
  private final AfterEditor editor;
  private final List<BundleRow> bundles = new ArrayList<>();

  FoundBundles(AfterEditor editor, ToFinish ground, ActualsDraft draft) {
    this.editor = editor;
    getStyleClass().add("plan-rows");
    fill(Say.text("Thrums: loom waste and trimmings"), ActualsPart.THRUMS, ground, draft);
    fill(Say.text("Samples: yarn that went into trials"), ActualsPart.SAMPLES, ground, draft);
  }

  /** Shows what the draft has. */
  void show(ActualsDraft draft) {
    bundles.forEach(bundle -> bundle.show(draft));
  }

  private void fill(String heading, ActualsPart part, ToFinish ground, ActualsDraft draft) {
    getChildren().add(new Label(heading));
    for (int row = 1; row <= draft.rows(part).size(); row++) {
      BundleRow bundle = new BundleRow(editor, ground, part, row);
      bundles.add(bundle);
      getChildren().add(bundle);
    }
    Button add = new Button(Say.text("Another bundle"));
    add.setId("add-" + part.key());
    add.setAccessibleText(part == ActualsPart.THRUMS ? Say.text("Another bundle of thrums") : Say.text("Another bundle of samples"));
    add.getStyleClass().addAll("small", "flat");
    add.setOnAction(_ -> {
      editor.enter(FoundRows.with(editor.draftProperty().get(), part, DraftRow.BLANK));
      editor.keep();
    });
    getChildren().add(add);
  }
}
