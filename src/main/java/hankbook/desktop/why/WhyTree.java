package hankbook.desktop.why;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.plan.Because;
import hankbook.plan.BecauseText;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A figure and, set in below it, what it is made of; below all of it the formula of the line that is chosen. */
public final class WhyTree extends VBox {
  private static final KeyCombination COPY = new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN);
  private static final double ROW = 26;
  private static final double FRAME = 4;
  private static final double MOST_ROWS = 14;

  private final Because figure;
  private final BecauseText.Written written;
  private final TreeView<WhyLine> tree = new TreeView<>();
  private final Label formula = new Label();
  private final Label copied = new Label();

  /**
   * The explanation of a figure.
   *
   * @param close takes it away again
   */
  public WhyTree(Because figure, BecauseText.Written written, Runnable close) {
    this.figure = figure;
    this.written = written;
    getStyleClass().add("why");
    tree.getStyleClass().add("why-tree");
    tree.setAccessibleText(Say.text("How {0} is reckoned", written.name(figure)));
    tree.setFixedCellSize(ROW);
    tree.setCellFactory(_ -> new WhyCell(written));
    tree.setRoot(item(new WhyLine(figure, "")));
    tree.getRoot().setExpanded(true);
    tree.prefHeightProperty().bind(Bindings.createDoubleBinding(() -> Math.min(tree.getExpandedItemCount(), MOST_ROWS) * ROW + FRAME, tree.expandedItemCountProperty()));
    tree.minHeightProperty().bind(tree.prefHeightProperty());
    tree.getSelectionModel().selectedItemProperty().subscribe(item -> formula.setText(item == null ? "" : written.formula(item.getValue().figure())));
    tree.getSelectionModel().selectFirst();
    addEventFilter(KeyEvent.KEY_PRESSED, key -> {
      if (key.getCode() == KeyCode.ESCAPE) {
        close.run();
        key.consume();
      } else if (COPY.match(key)) {
        copy();
        key.consume();
      }
    });
    formula.setWrapText(true);
    formula.setMinHeight(USE_PREF_SIZE);
    formula.getStyleClass().addAll("quiet", "why-formula");
    copied.getStyleClass().add("quiet");
    getChildren().addAll(tree, formula, acts(close));
  }

  private static TreeItem<WhyLine> item(WhyLine line) {
    TreeItem<WhyLine> item = new TreeItem<>(line);
    line.parts().forEach(part -> item.getChildren().add(item(part)));
    return item;
  }

  private HBox acts(Runnable close) {
    HBox acts = new HBox(act(Say.text("Copy as text"), "why-copy", this::copy), act(Say.text("Close"), "why-close", close), copied);
    acts.getStyleClass().add("why-acts");
    return acts;
  }

  private static Button act(String words, String styleClass, Runnable does) {
    Button act = new Button(words);
    act.getStyleClass().addAll(Styles.SMALL, Styles.FLAT, styleClass);
    act.setMinWidth(USE_PREF_SIZE);
    act.setOnAction(_ -> does.run());
    return act;
  }

  private void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putString(String.join(System.lineSeparator(), BecauseText.lines(figure, written)));
    boolean taken = Clipboard.getSystemClipboard().setContent(content);
    copied.setText(taken ? Say.text("It is on the clipboard.") : Say.text("The clipboard did not take it."));
  }
}
