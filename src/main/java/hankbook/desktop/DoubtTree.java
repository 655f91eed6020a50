package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.yarn.Uncertainty;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** How surely a yarn's metres are known, and by what: the whole, and set in below it its parts, whose squares sum to its square. */
final class DoubtTree extends VBox {
  DoubtTree(Uncertainty doubt) {
    getStyleClass().add("doubt");
    GridPane tree = new GridPane();
    tree.getStyleClass().add("doubt-parts");
    tree.addRow(0, new Label("All of it together"), error(doubt.combined()));
    for (Uncertainty.Part part : doubt.parts()) {
      Label cause = Labels.quiet(part.words());
      cause.getStyleClass().add("doubt-part");
      tree.addRow(tree.getRowCount(), cause, error(part.error()));
    }
    getChildren().add(tree);
    if (doubt.parts().size() > 1) {
      getChildren().add(Labels.quiet("Errors of different sorts partly cancel out, so the whole is less than the sum: its square is the sum of the squares."));
    }
    getChildren().add(Labels.quiet("Two times out of three the truth lies within ±; weighing or measuring again makes it smaller."));
  }

  private static Label error(Length error) {
    Label label = new Label("± " + Wording.metres(error));
    label.setMinWidth(USE_PREF_SIZE);
    label.getStyleClass().add("doubt-error");
    return label;
  }
}
